-- Writes a run again, if it still has the revision it was changed from.
-- Parameters: every column of run but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: start_utc_ms milliseconds since 1970-01-01T00:00Z; in_utc_ms milliseconds since 1970-01-01T00:00Z;
-- running_ms milliseconds; known_by counter=how, joined by semicolons; track_ms milliseconds;
-- warm_up_ms milliseconds; loaded_ms milliseconds; high_speed_ms milliseconds; distance_m metres;
-- highest_rpm revolutions per minute; water_highest_mk millikelvin; oil_highest_mk millikelvin;
-- oil_pressure_pa pascals; oil_added_ul microlitres; ambient_mk millikelvin; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE run SET
  engine_id = ?, car_id = ?, event_id = ?, planned_id = ?, kind = ?, name = ?, start_utc_ms = ?,
  start_zone = ?, start_offset_s = ?, start_known = ?, in_utc_ms = ?, in_zone = ?, in_offset_s = ?,
  driver_id = ?, running_ms = ?, known_by = ?, track_ms = ?, warm_up_ms = ?, loaded_ms = ?, high_speed_ms = ?,
  distance_m = ?, laps = ?, race_starts = ?, engine_starts = ?, heat_cycles = ?, pulls = ?, over_revs = ?,
  highest_rpm = ?, highest_from = ?, water_highest_mk = ?, oil_highest_mk = ?, oil_pressure_pa = ?,
  oil_added_ul = ?, ambient_mk = ?, driver_asked = ?, remarks = ?, as_typed = ?, queried = ?,
  perhaps_same_id = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
