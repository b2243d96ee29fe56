-- Writes a build again, if it still has the revision it was changed from.
-- Parameters: every column of build but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: zones zones opened, joined by semicolons; opened_utc_ms milliseconds since 1970-01-01T00:00Z;
-- closed_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE build SET
  engine_id = ?, number = ?, zones = ?, opened_utc_ms = ?, opened_zone = ?, opened_offset_s = ?,
  closed_utc_ms = ?, closed_zone = ?, closed_offset_s = ?, signed_by = ?, note = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
