-- Writes links between incidents again, if they still have the revision they were changed from.
-- Parameters: every column of incident_link but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE incident_link SET
  incident_id = ?, other_id = ?, why = ?, "by" = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?,
  checksum = ?
WHERE id = ? AND rev = ?;
