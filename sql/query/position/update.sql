-- Writes a position again, if it still has the revision it was changed from.
-- Parameters: every column of position but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: needed 1 yes, 0 no; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE position SET
  design_id = ?, car_id = ?, kind = ?, name = ?, ordinal = ?, needed = ?, standing = ?, struck_because = ?,
  amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
