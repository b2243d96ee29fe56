-- Writes a mark on a face again, if it still has the revision it was changed from.
-- Parameters: every column of face_mark but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: x_nm nanometres from the front end; y_nm nanometres from the inlet edge; along_nm nanometres; across_nm
-- nanometres; depth_nm nanometres, below 0 where it stands proud; made_at_ms milliseconds since 1970-01-01T00:00Z;
-- outline corners in millimetres.
UPDATE face_mark SET
  look_id = ?, kind = ?, x_nm = ?, y_nm = ?, along_nm = ?, across_nm = ?, outline = ?, depth_nm = ?, words = ?,
  standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
