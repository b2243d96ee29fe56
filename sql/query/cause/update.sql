-- Writes a cause again, if it still has the revision it was changed from.
-- Parameters: every column of cause but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: share hundredths of a percent; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE cause SET
  incident_id = ?, statement = ?, area = ?, share = ?, "by" = ?, note = ?, predicts = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
