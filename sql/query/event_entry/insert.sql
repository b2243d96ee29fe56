-- Writes a car entered for the first time.
-- Parameters: every column of event_entry, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO event_entry (
  id, event_id, car_id, engine_id, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
