-- Writes a part kept for a job again, if it still has the revision it was changed from.
-- Parameters: every column of job_part but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE job_part SET
  job_id = ?, part_id = ?, stock_id = ?, count = ?, standing = ?, struck_because = ?, amended_by = ?,
  rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
