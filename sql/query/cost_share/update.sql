-- Writes a share of a cost again, if it still has the revision it was changed from.
-- Parameters: every column of cost_share but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE cost_share SET
  line_id = ?, car_id = ?, parts = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
