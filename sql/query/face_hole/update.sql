-- Writes a hole of a face again, if it still has the revision it was changed from.
-- Parameters: every column of face_hole but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: x_nm nanometres from the front end; y_nm nanometres from the inlet edge; diameter_nm nanometres; made_at_ms
-- milliseconds since 1970-01-01T00:00Z.
UPDATE face_hole SET
  outline_id = ?, kind = ?, number = ?, x_nm = ?, y_nm = ?, diameter_nm = ?, standing = ?, struck_because = ?,
  amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
