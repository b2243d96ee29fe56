-- Every event, whatever its standing, in the order first written.
-- Columns: every column of event, in its order.
-- Units: first_day day, 2026-07-05; last_day day, 2026-07-05; zone name of a time zone;
-- truck_leaves_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, name, circuit, first_day, last_day, zone, truck_leaves_utc_ms, truck_leaves_zone, truck_leaves_offset_s,
  note, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM event ORDER BY rowid;
