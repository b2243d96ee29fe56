-- Writes an event again, if it still has the revision it was changed from.
-- Parameters: every column of event but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: first_day day, 2026-07-05; last_day day, 2026-07-05; zone name of a time zone;
-- truck_leaves_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE event SET
  name = ?, circuit = ?, first_day = ?, last_day = ?, zone = ?, truck_leaves_utc_ms = ?, truck_leaves_zone = ?,
  truck_leaves_offset_s = ?, note = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
