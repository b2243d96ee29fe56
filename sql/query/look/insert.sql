-- Writes a look for the first time.
-- Parameters: every column of look, in its order.
-- Units: what Something a person looked at before a run.; at_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO look (
  id, car_id, engine_id, what, at_utc_ms, at_zone, at_offset_s, "by", words, standing, struck_because,
  made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
