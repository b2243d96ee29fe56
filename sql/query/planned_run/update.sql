-- Writes a planned run again, if it still has the revision it was changed from.
-- Parameters: every column of planned_run but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: day day, 2026-07-05; out time of day, 15:00; expected_ms milliseconds;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE planned_run SET
  event_id = ?, ordinal = ?, kind = ?, name = ?, day = ?, out = ?, expected_ms = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
