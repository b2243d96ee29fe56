-- Every work, whatever its standing, in the order first written.
-- Columns: every column of work, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; removed_nm nanometres; left_nm nanometres;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, kind, at_utc_ms, at_zone, at_offset_s, engine_id, part_id, result, removed_nm, left_nm, "by", note,
  standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM work ORDER BY rowid;
