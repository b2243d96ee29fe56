-- Writes figures of fasteners again, if they still have the revision they were changed from.
-- Parameters: every column of fastener but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: diameter_nm nanometres; nut_factor decimal, torque over pull times diameter; stretched_diameter_nm nanometres;
-- stretched_length_nm nanometres; chosen_for_pa pascals; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE fastener SET
  design_id = ?, count = ?, diameter_nm = ?, nut_factor = ?, lubricant = ?, stretched_diameter_nm = ?,
  stretched_length_nm = ?, modulus_gigapascals = ?, proof_newtons = ?, makers_pull_newtons = ?, chosen_for_pa = ?,
  source = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
