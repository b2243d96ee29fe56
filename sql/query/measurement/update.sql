-- Writes a measurement again, if it still has the revision it was changed from.
-- Parameters: every column of measurement but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: value whole parts of the dimension of its kind; at_utc_ms milliseconds since 1970-01-01T00:00Z; in_use 1
-- yes, 0 no; _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE measurement SET
  build_id = ?, kind = ?, number = ?, spot = ?, value = ?, typed = ?, at_utc_ms = ?, at_zone = ?, at_offset_s
  = ?, tool_id = ?, temperature_mk = ?, stood = ?, in_use = ?, "by" = ?, note = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
