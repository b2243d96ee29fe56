-- Writes a tool again, if it still has the revision it was changed from.
-- Parameters: every column of tool but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE tool SET
  mark = ?, kind = ?, note = ?, out_of_use = ?, why = ?, standing = ?, struck_because = ?, amended_by = ?,
  rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
