-- Every event entry, whatever its standing, in the order first written.
-- Columns: every column of event_entry, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, event_id, car_id, engine_id, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM event_entry ORDER BY rowid;
