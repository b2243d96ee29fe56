-- Writes a measurement for the first time.
-- Parameters: every column of measurement, in its order.
-- Units: value whole parts of the dimension of its kind; at_utc_ms milliseconds since 1970-01-01T00:00Z; in_use 1
-- yes, 0 no; _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO measurement (
  id, build_id, kind, number, spot, value, typed, at_utc_ms, at_zone, at_offset_s, tool_id, temperature_mk,
  stood, in_use, "by", note, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
