-- Writes actions for the first time.
-- Parameters: every column of case_action, in its order.
-- Units: due day, 2026-07-05; done_utc_ms milliseconds since 1970-01-01T00:00Z; done_zone name of a time zone;
-- done_offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO case_action (
  id, incident_id, cause_id, kind, what, who, due, done_utc_ms, done_zone, done_offset_s, note, standing,
  struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
