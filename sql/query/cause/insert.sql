-- Writes a cause for the first time.
-- Parameters: every column of cause, in its order.
-- Units: share hundredths of a percent; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO cause (
  id, incident_id, statement, area, share, "by", note, predicts, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
