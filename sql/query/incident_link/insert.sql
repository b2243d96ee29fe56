-- Writes links between incidents for the first time.
-- Parameters: every column of incident_link, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO incident_link (
  id, incident_id, other_id, why, "by", standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
