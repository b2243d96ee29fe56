-- Writes a maker's notice again, if it still has the revision it was changed from.
-- Parameters: every column of notice but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: holds 1 yes, 0 no; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE notice SET
  number = ?, maker = ?, dated = ?, design_id = ?, batch = ?, marks = ?, asks = ?, holds = ?, note = ?,
  standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
