-- Writes a concession again, if it still has the revision it was changed from.
-- Parameters: every column of concession but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z;
-- what Something outside its limit or specification, signed as accepted as it is.; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE concession SET
  engine_id = ?, car_id = ?, build_id = ?, part_id = ?, at_utc_ms = ?, at_zone = ?, at_offset_s = ?,
  what = ?, why = ?, "by" = ?, kind = ?, number = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?,
  checksum = ?
WHERE id = ? AND rev = ?;
