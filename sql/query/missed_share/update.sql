-- Writes a share of something missed again, if it still has the revision it was changed from.
-- Parameters: every column of missed_share but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: share hundredths of a percent; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE missed_share SET
  missed_id = ?, run_id = ?, incident_id = ?, share = ?, note = ?, standing = ?, struck_because = ?,
  amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
