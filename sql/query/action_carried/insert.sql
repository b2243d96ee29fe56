-- Writes engines that carry an action for the first time.
-- Parameters: every column of action_carried, in its order.
-- Units: from_utc_ms milliseconds since 1970-01-01T00:00Z; from_zone name of a time zone; from_offset_s seconds east
-- of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO action_carried (
  id, action_id, engine_id, part_id, from_utc_ms, from_zone, from_offset_s, "by", standing, struck_because,
  made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
