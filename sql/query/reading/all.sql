-- Every reading, whatever its standing, in the order first written.
-- Columns: every column of reading, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; value in the unit of the kind of reading;
-- baseline 1 yes, 0 no; _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, kind, at_utc_ms, at_zone, at_offset_s, engine_id, part_id, place, value, grade, heard_at, warmth,
  baseline, "by", note, tool_id, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM reading ORDER BY rowid;
