-- Every incident, whatever its standing, in the order first written.
-- Columns: every column of incident, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; closed_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, mark, title, at_utc_ms, at_zone, at_offset_s, found, run_id, event_id, car_id, engine_id, severity,
  seen, before_id, "by", closed_utc_ms, closed_zone, closed_offset_s, closed_by, closed_because, note,
  standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM incident ORDER BY rowid;
