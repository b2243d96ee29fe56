-- Writes a calibration again, if it still has the revision it was changed from.
-- Parameters: every column of calibration but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: as_found hundredths of a percent, reading less true value; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE calibration SET
  tool_id = ?, day = ?, "by" = ?, as_found = ?, due = ?, note = ?, standing = ?, struck_because = ?,
  amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
