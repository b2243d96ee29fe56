-- Writes a quarantine for the first time.
-- Parameters: every column of quarantine, in its order.
-- Units: from_utc_ms milliseconds since 1970-01-01T00:00Z; to_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO quarantine (
  id, part_id, member, from_utc_ms, from_zone, from_offset_s, why, "by", to_utc_ms, to_zone, to_offset_s,
  released, released_by, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
