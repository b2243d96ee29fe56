-- Writes outline of a face again, if it still has the revision it was changed from.
-- Parameters: every column of face_outline but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: length_nm nanometres; width_nm nanometres; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE face_outline SET
  design_id = ?, length_nm = ?, width_nm = ?, front_end = ?, exhaust = ?, source = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
