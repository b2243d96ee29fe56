-- Writes photos again, if they still have the revision they were changed from.
-- Parameters: every column of photo but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: size bytes; taken_utc_ms milliseconds since 1970-01-01T00:00Z; taken_zone name of a time zone;
-- taken_offset_s seconds east of UTC; at_utc_ms milliseconds since 1970-01-01T00:00Z; at_zone name of a time zone;
-- at_offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE photo SET
  name = ?, content = ?, size = ?, media = ?, width = ?, height = ?, taken_utc_ms = ?, taken_zone = ?,
  taken_offset_s = ?, incident_id = ?, finding_id = ?, engine_id = ?, part_id = ?, reading_id = ?, number = ?,
  caption = ?, at_utc_ms = ?, at_zone = ?, at_offset_s = ?, "by" = ?, standing = ?, struck_because = ?, amended_by =
  ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
