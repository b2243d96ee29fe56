-- Writes a part an incident names again, if it still has the revision it was changed from.
-- Parameters: every column of incident_part but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: ran_ms milliseconds; at_least 1 yes, 0 no; limit_ms milliseconds; made_at_ms milliseconds since
-- 1970-01-01T00:00Z.
UPDATE incident_part SET
  incident_id = ?, part_id = ?, member = ?, harm = ?, ran_ms = ?, at_least = ?, limit_ms = ?, note = ?,
  standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
