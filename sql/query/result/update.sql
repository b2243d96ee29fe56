-- Writes a result again, if it still has the revision it was changed from.
-- Parameters: every column of result but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; points decimal, points of a series; _offset_s seconds east
-- of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE result SET
  event_id = ?, car_id = ?, planned_id = ?, at_utc_ms = ?, at_zone = ?, at_offset_s = ?, how = ?, place = ?,
  points = ?, note = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
