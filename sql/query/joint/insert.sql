-- Writes a joint for the first time.
-- Parameters: every column of joint, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; cycle 1 yes, 0 no; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO joint (
  id, engine_id, build_id, fasteners, which, stage, method, value, lubricant, tool_id, at_utc_ms, at_zone,
  at_offset_s, cycle, "by", second, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
