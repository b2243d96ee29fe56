-- Every over-rev, whatever its standing, in the order first written.
-- Columns: every column of over_rev, in its order.
-- Units: peak_rpm revolutions per minute; lasted_ms milliseconds; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, run_id, peak_rpm, lasted_ms, gear, "from", note, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
FROM over_rev ORDER BY rowid;
