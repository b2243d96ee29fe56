-- Writes a part design again, if it still has the revision it was changed from.
-- Parameters: every column of part_design but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: single_use 1 yes, 0 no; can_wreck 1 yes, 0 no; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE part_design SET
  name = ?, kind = ?, maker = ?, part_number = ?, single_use = ?, can_wreck = ?, specification = ?, gasket_class = ?,
  standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
