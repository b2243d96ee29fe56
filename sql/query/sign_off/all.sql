-- Every signing of a build sheet, whatever its standing, in the order first written.
-- Columns: every column of sign_off, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC; made_at_ms milliseconds since
-- 1970-01-01T00:00Z.
SELECT
  id, build_id, at_utc_ms, at_zone, at_offset_s, "by", second, words, standing, struck_because, made_at_ms,
  made_by, amended_by, rev, checksum
FROM sign_off ORDER BY rowid;
