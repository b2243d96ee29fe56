-- Every job, whatever its standing, in the order first written.
-- Columns: every column of job, in its order.
-- Units: what Work planned.; minutes_expected minutes of work; minutes_spent minutes of work;
-- asked_utc_ms milliseconds since 1970-01-01T00:00Z; done_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, what, engine_id, part_id, car_id, before_id, who, minutes_expected, minutes_spent, waiting_for,
  run_id, asked_utc_ms, asked_zone, asked_offset_s, "by", done_utc_ms, done_zone, done_offset_s, result,
  standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM job ORDER BY rowid;
