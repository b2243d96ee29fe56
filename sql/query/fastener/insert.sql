-- Writes figures of fasteners for the first time.
-- Parameters: every column of fastener, in its order.
-- Units: diameter_nm nanometres; nut_factor decimal, torque over pull times diameter; stretched_diameter_nm nanometres;
-- stretched_length_nm nanometres; chosen_for_pa pascals; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO fastener (
  id, design_id, count, diameter_nm, nut_factor, lubricant, stretched_diameter_nm, stretched_length_nm,
  modulus_gigapascals, proof_newtons, makers_pull_newtons, chosen_for_pa, source, standing, struck_because,
  made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
