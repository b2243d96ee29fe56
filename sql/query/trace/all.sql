-- Every row of traces, whatever its standing, in the order first written.
-- Columns: every column of trace, in its order.
-- Units: content SHA-256 of the file; samples SHA-256 of what was read in it; size bytes; begins_utc_ms milliseconds
-- since 1970-01-01T00:00Z; begins_zone name of a time zone; begins_offset_s seconds east of UTC; lasted_ms
-- milliseconds; running_ms milliseconds; loaded_ms milliseconds; high_speed_ms milliseconds; distance_m metres;
-- highest_rpm revolutions a minute; water_highest_mk millikelvin; oil_highest_mk millikelvin; oil_pressure_pa
-- pascals; kept SHA-256 of the kept samples; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, run_id, name, content, samples, size, begins_utc_ms, begins_zone, begins_offset_s, lasted_ms, rows, form,
  settings, running_ms, loaded_ms, high_speed_ms, distance_m, highest_rpm, water_highest_mk, oil_highest_mk,
  oil_pressure_pa, pulls, heat_from_cold, heat_from_hot, heat_end, speeds, defects, kept, "by", note, standing,
  struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM trace ORDER BY rowid;
