-- Writes running told again, if it still has the revision it was changed from.
-- Parameters: every column of told_running but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: from_utc_ms milliseconds since 1970-01-01T00:00Z; to_utc_ms milliseconds since 1970-01-01T00:00Z;
-- likely_ms milliseconds; lowest_ms milliseconds; highest_ms milliseconds; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE told_running SET
  engine_id = ?, from_utc_ms = ?, from_zone = ?, from_offset_s = ?, to_utc_ms = ?, to_zone = ?,
  to_offset_s = ?, likely_ms = ?, lowest_ms = ?, highest_ms = ?, told_by = ?, how_he_knows = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
