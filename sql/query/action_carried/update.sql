-- Writes engines that carry an action again, if they still have the revision they were changed from.
-- Parameters: every column of action_carried but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: from_utc_ms milliseconds since 1970-01-01T00:00Z; from_zone name of a time zone; from_offset_s seconds east
-- of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE action_carried SET
  action_id = ?, engine_id = ?, part_id = ?, from_utc_ms = ?, from_zone = ?, from_offset_s = ?, "by" = ?, standing =
  ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
