-- Every run-on, whatever its standing, in the order first written.
-- Columns: every column of run_on, in its order.
-- Units: up_to in the unit of the limit's counter; past a limit of readings milliseconds of running;
-- at_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, limit_id, reading_limit_id, part_id, engine_id, car_id, up_to, at_utc_ms, at_zone, at_offset_s, "by",
  adviser, advice, why, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM run_on ORDER BY rowid;
