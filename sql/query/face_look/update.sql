-- Writes a look at a face again, if it still has the revision it was changed from.
-- Parameters: every column of face_look but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; at_zone name of a time zone; at_offset_s seconds east of
-- UTC; finest_nm nanometres; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE face_look SET
  part_id = ?, face = ?, at_utc_ms = ?, at_zone = ?, at_offset_s = ?, method = ?, finest_nm = ?, tool_id = ?,
  "by" = ?, note = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
