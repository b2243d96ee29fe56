-- Writes dyno sheets again, if they still have the revision they were changed from.
-- Parameters: every column of dyno_sheet but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: factor_millionths millionths; pressure_pa pascals; air_mk millikelvin; humidity_permille thousandths;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE dyno_sheet SET
  run_id = ?, dyno = ?, figures = ?, correction = ?, factor_millionths = ?, pressure_pa = ?, pressure_is = ?, air_mk
  = ?, humidity_permille = ?, sweep_rpm_per_second = ?, fuel = ?, oil = ?, plugs = ?, map = ?, operator = ?,
  baseline = ?, verdict = ?, note = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
