-- Every track repair, whatever its standing, in the order first written.
-- Columns: every column of track_repair, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, build_id, went_back, tool_id, second, note, standing, struck_because, made_at_ms, made_by, amended_by,
  rev, checksum
FROM track_repair ORDER BY rowid;
