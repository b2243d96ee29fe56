-- Every calibration, whatever its standing, in the order first written.
-- Columns: every column of calibration, in its order.
-- Units: as_found hundredths of a percent, reading less true value; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, tool_id, day, "by", as_found, due, note, standing, struck_because, made_at_ms, made_by, amended_by,
  rev, checksum
FROM calibration ORDER BY rowid;
