-- Every missed run, whatever its standing, in the order first written.
-- Columns: every column of missed_run, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, event_id, car_id, engine_id, planned_id, at_utc_ms, at_zone, at_offset_s, how, words, standing,
  struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM missed_run ORDER BY rowid;
