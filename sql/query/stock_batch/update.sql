-- Writes a batch on the shelf again, if it still has the revision it was changed from.
-- Parameters: every column of stock_batch but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE stock_batch SET
  design_id = ?, batch = ?, supplier = ?, use_by = ?, shelf = ?, least_to_keep = ?, note = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
