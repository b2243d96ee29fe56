-- Writes a seal again, if it still has the revision it was changed from.
-- Parameters: every column of seal but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: from_utc_ms milliseconds since 1970-01-01T00:00Z; broken_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE seal SET
  engine_id = ?, number = ?, owner = ?, from_utc_ms = ?, from_zone = ?, from_offset_s = ?,
  broken_utc_ms = ?, broken_zone = ?, broken_offset_s = ?, why = ?, "by" = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
