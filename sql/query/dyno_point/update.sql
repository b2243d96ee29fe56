-- Writes points of pulls again, if they still have the revision they were changed from.
-- Parameters: every column of dyno_point but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: speed_rpm revolutions a minute; torque_millinewton_metres millinewton metres; lambda_thousandths
-- thousandths; oil_pressure_pa pascals; oil_mk millikelvin; water_mk millikelvin; exhaust degrees Celsius of each
-- cylinder; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE dyno_point SET
  sheet_id = ?, pull = ?, speed_rpm = ?, torque_millinewton_metres = ?, lambda_thousandths = ?, oil_pressure_pa = ?,
  oil_mk = ?, water_mk = ?, exhaust = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
