-- Writes dyno sheets for the first time.
-- Parameters: every column of dyno_sheet, in its order.
-- Units: factor_millionths millionths; pressure_pa pascals; air_mk millikelvin; humidity_permille thousandths;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO dyno_sheet (
  id, run_id, dyno, figures, correction, factor_millionths, pressure_pa, pressure_is, air_mk, humidity_permille,
  sweep_rpm_per_second, fuel, oil, plugs, map, operator, baseline, verdict, note, standing, struck_because,
  made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
