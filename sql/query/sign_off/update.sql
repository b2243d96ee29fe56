-- Writes a signing of a build sheet again, if it still has the revision it was changed from.
-- Parameters: every column of sign_off but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC; made_at_ms milliseconds since
-- 1970-01-01T00:00Z.
UPDATE sign_off SET
  build_id = ?, at_utc_ms = ?, at_zone = ?, at_offset_s = ?, "by" = ?, second = ?, words = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
