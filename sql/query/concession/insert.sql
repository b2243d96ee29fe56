-- Writes a concession for the first time.
-- Parameters: every column of concession, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z;
-- what Something outside its limit or specification, signed as accepted as it is.; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO concession (
  id, engine_id, car_id, build_id, part_id, at_utc_ms, at_zone, at_offset_s, what, why, "by", kind, number, standing,
  struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
