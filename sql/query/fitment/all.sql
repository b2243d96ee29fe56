-- Every fitment, whatever its standing, in the order first written.
-- Columns: every column of fitment, in its order.
-- Units: from_utc_ms milliseconds since 1970-01-01T00:00Z; to_utc_ms milliseconds since 1970-01-01T00:00Z;
-- borrowed 1 yes, 0 no; _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, part_id, engine_id, car_id, position_id, from_utc_ms, from_zone, from_offset_s, to_utc_ms, to_zone,
  to_offset_s, build_in_id, build_out_id, why, condition, borrowed, standing, struck_because, made_at_ms,
  made_by, amended_by, rev, checksum
FROM fitment ORDER BY rowid;
