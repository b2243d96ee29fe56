-- Writes a reading of an hour meter again, if it still has the revision it was changed from.
-- Parameters: every column of meter_reading but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; shows_ms milliseconds; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE meter_reading SET
  meter_id = ?, at_utc_ms = ?, at_zone = ?, at_offset_s = ?, shows_ms = ?, "by" = ?, note = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
