-- Writes a line of a face again, if it still has the revision it was changed from.
-- Parameters: every column of face_line but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: goes_nm nanometres; stops_nm nanometres; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE face_line SET
  look_id = ?, line = ?, number = ?, goes_nm = ?, stops_nm = ?, standing = ?, struck_because = ?, amended_by = ?,
  rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
