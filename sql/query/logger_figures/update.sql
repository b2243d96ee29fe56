-- Writes figures for traces again, if they still have the revision they were changed from.
-- Parameters: every column of logger_figures but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: running_above_rpm revolutions a minute; loaded_above_rpm revolutions a minute; high_speed_above_rpm
-- revolutions a minute; oil_floor_pa pascals for each 1000 revolutions a minute; oil_floor_from_rpm revolutions a
-- minute; cold_below_mk millikelvin; hot_above_mk millikelvin; hot_for_ms milliseconds; made_at_ms milliseconds
-- since 1970-01-01T00:00Z.
UPDATE logger_figures SET
  design_id = ?, running_above_rpm = ?, loaded_above_rpm = ?, high_speed_above_rpm = ?, oil_floor_pa = ?,
  oil_floor_from_rpm = ?, cold_below_mk = ?, hot_above_mk = ?, hot_for_ms = ?, source = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
