-- Every row of links between incidents, whatever its standing, in the order first written.
-- Columns: every column of incident_link, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, incident_id, other_id, why, "by", standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM incident_link ORDER BY rowid;
