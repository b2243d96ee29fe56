-- Writes answers to lessons again, if they still have the revision they were changed from.
-- Parameters: every column of lesson_answer but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; at_zone name of a time zone; at_offset_s seconds east of
-- UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE lesson_answer SET
  lesson_id = ?, build_id = ?, at_utc_ms = ?, at_zone = ?, at_offset_s = ?, met = ?, concession_id = ?, words = ?,
  "by" = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
