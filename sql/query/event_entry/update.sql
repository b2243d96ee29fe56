-- Writes a car entered again, if it still has the revision it was changed from.
-- Parameters: every column of event_entry but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE event_entry SET
  event_id = ?, car_id = ?, engine_id = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?,
  checksum = ?
WHERE id = ? AND rev = ?;
