-- Writes a reading again, if it still has the revision it was changed from.
-- Parameters: every column of reading but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; value in the unit of the kind of reading;
-- baseline 1 yes, 0 no; _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE reading SET
  kind = ?, at_utc_ms = ?, at_zone = ?, at_offset_s = ?, engine_id = ?, part_id = ?, place = ?, value = ?,
  grade = ?, heard_at = ?, warmth = ?, baseline = ?, "by" = ?, note = ?, tool_id = ?, standing = ?, struck_because = ?,
  amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
