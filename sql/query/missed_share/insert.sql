-- Writes a share of something missed for the first time.
-- Parameters: every column of missed_share, in its order.
-- Units: share hundredths of a percent; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO missed_share (
  id, missed_id, run_id, incident_id, share, note, standing, struck_because, made_at_ms, made_by, amended_by,
  rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
