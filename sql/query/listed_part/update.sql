-- Writes a line of a parts list again, if it still has the revision it was changed from.
-- Parameters: every column of listed_part but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE listed_part SET
  position_id = ?, engine_id = ?, design_id = ?, valid_from = ?, valid_to = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
