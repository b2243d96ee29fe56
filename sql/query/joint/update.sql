-- Writes a joint again, if it still has the revision it was changed from.
-- Parameters: every column of joint but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; cycle 1 yes, 0 no; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE joint SET
  engine_id = ?, build_id = ?, fasteners = ?, which = ?, stage = ?, method = ?, value = ?, lubricant = ?,
  tool_id = ?, at_utc_ms = ?, at_zone = ?, at_offset_s = ?, cycle = ?, "by" = ?, second = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
