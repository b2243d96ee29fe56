-- Writes a move of items again, if it still has the revision it was changed from.
-- Parameters: every column of stock_move but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; change count, below nothing when they went;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE stock_move SET
  stock_id = ?, at_utc_ms = ?, at_zone = ?, at_offset_s = ?, change = ?, kind = ?, part_id = ?, job_id = ?,
  "by" = ?, note = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
