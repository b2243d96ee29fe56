-- Writes a part an incident names for the first time.
-- Parameters: every column of incident_part, in its order.
-- Units: ran_ms milliseconds; at_least 1 yes, 0 no; limit_ms milliseconds; made_at_ms milliseconds since
-- 1970-01-01T00:00Z.
INSERT INTO incident_part (
  id, incident_id, part_id, member, harm, ran_ms, at_least, limit_ms, note, standing, struck_because,
  made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
