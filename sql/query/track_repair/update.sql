-- Writes a track repair again, if it still has the revision it was changed from.
-- Parameters: every column of track_repair but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE track_repair SET
  build_id = ?, went_back = ?, tool_id = ?, second = ?, note = ?, standing = ?, struck_because = ?,
  amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
