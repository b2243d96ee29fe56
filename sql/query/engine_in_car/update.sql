-- Writes an engine in a car again, if it still has the revision it was changed from.
-- Parameters: every column of engine_in_car but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: from_utc_ms milliseconds since 1970-01-01T00:00Z; to_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE engine_in_car SET
  engine_id = ?, car_id = ?, from_utc_ms = ?, from_zone = ?, from_offset_s = ?, to_utc_ms = ?, to_zone = ?,
  to_offset_s = ?, note = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
