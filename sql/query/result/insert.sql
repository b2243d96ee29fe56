-- Writes a result for the first time.
-- Parameters: every column of result, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; points decimal, points of a series; _offset_s seconds east
-- of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO result (
  id, event_id, car_id, planned_id, at_utc_ms, at_zone, at_offset_s, how, place, points, note, standing,
  struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
