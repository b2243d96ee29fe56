-- Writes a prior life again, if it still has the revision it was changed from.
-- Parameters: every column of prior_life but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: amount in the unit of the counter; lowest in the unit of the counter;
-- highest in the unit of the counter; at_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE prior_life SET
  part_id = ?, engine_id = ?, counter = ?, kind = ?, amount = ?, lowest = ?, highest = ?, at_utc_ms = ?,
  at_zone = ?, at_offset_s = ?, words = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?,
  checksum = ?
WHERE id = ? AND rev = ?;
