-- Writes a quarantine again, if it still has the revision it was changed from.
-- Parameters: every column of quarantine but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: from_utc_ms milliseconds since 1970-01-01T00:00Z; to_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE quarantine SET
  part_id = ?, member = ?, from_utc_ms = ?, from_zone = ?, from_offset_s = ?, why = ?, "by" = ?,
  to_utc_ms = ?, to_zone = ?, to_offset_s = ?, released = ?, released_by = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
