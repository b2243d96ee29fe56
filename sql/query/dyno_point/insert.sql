-- Writes points of pulls for the first time.
-- Parameters: every column of dyno_point, in its order.
-- Units: speed_rpm revolutions a minute; torque_millinewton_metres millinewton metres; lambda_thousandths
-- thousandths; oil_pressure_pa pascals; oil_mk millikelvin; water_mk millikelvin; exhaust degrees Celsius of each
-- cylinder; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO dyno_point (
  id, sheet_id, pull, speed_rpm, torque_millinewton_metres, lambda_thousandths, oil_pressure_pa, oil_mk, water_mk,
  exhaust, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
