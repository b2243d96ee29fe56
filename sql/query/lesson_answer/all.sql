-- Every row of answers to lessons, whatever its standing, in the order first written.
-- Columns: every column of lesson_answer, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; at_zone name of a time zone; at_offset_s seconds east of
-- UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, lesson_id, build_id, at_utc_ms, at_zone, at_offset_s, met, concession_id, words, "by", standing,
  struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM lesson_answer ORDER BY rowid;
