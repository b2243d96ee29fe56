-- Every reading of an hour meter, whatever its standing, in the order first written.
-- Columns: every column of meter_reading, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; shows_ms milliseconds; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, meter_id, at_utc_ms, at_zone, at_offset_s, shows_ms, "by", note, standing, struck_because, made_at_ms,
  made_by, amended_by, rev, checksum
FROM meter_reading ORDER BY rowid;
