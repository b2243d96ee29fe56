-- Writes a fitment again, if it still has the revision it was changed from.
-- Parameters: every column of fitment but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: from_utc_ms milliseconds since 1970-01-01T00:00Z; to_utc_ms milliseconds since 1970-01-01T00:00Z;
-- borrowed 1 yes, 0 no; _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE fitment SET
  part_id = ?, engine_id = ?, car_id = ?, position_id = ?, from_utc_ms = ?, from_zone = ?, from_offset_s = ?,
  to_utc_ms = ?, to_zone = ?, to_offset_s = ?, build_in_id = ?, build_out_id = ?, why = ?, condition = ?,
  borrowed = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
