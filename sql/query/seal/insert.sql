-- Writes a seal for the first time.
-- Parameters: every column of seal, in its order.
-- Units: from_utc_ms milliseconds since 1970-01-01T00:00Z; broken_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO seal (
  id, engine_id, number, owner, from_utc_ms, from_zone, from_offset_s, broken_utc_ms, broken_zone,
  broken_offset_s, why, "by", standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
