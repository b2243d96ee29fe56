-- Writes a work again, if it still has the revision it was changed from.
-- Parameters: every column of work but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; removed_nm nanometres; left_nm nanometres;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE work SET
  kind = ?, at_utc_ms = ?, at_zone = ?, at_offset_s = ?, engine_id = ?, part_id = ?, result = ?,
  removed_nm = ?, left_nm = ?, "by" = ?, note = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?,
  checksum = ?
WHERE id = ? AND rev = ?;
