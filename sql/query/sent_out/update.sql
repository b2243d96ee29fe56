-- Writes a thing out with others again, if it still has the revision it was changed from.
-- Parameters: every column of sent_out but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: from_utc_ms milliseconds since 1970-01-01T00:00Z; back_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE sent_out SET
  part_id = ?, engine_id = ?, design_id = ?, count = ?, sent_to = ?, asked = ?, target = ?, from_utc_ms = ?,
  from_zone = ?, from_offset_s = ?, promised = ?, back_utc_ms = ?, back_zone = ?, back_offset_s = ?,
  result = ?, "by" = ?, note = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
