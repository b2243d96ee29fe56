-- Writes figures for the fit at speed again, if they still have the revision they were changed from.
-- Parameters: every column of speed_figures but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: block_hot_mk millikelvin; crank_hot_mk millikelvin; rods_hot_mk millikelvin; pistons_hot_mk millikelvin;
-- block_cold_mk millikelvin; pistons_cold_mk millikelvin; main_spacing_nm nanometres; margin_nm nanometres;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE speed_figures SET
  design_id = ?, block = ?, crank = ?, rods = ?, pistons = ?, block_hot_mk = ?, crank_hot_mk = ?, rods_hot_mk = ?,
  pistons_hot_mk = ?, block_cold_mk = ?, pistons_cold_mk = ?, main_spacing_nm = ?, margin_nm = ?, source = ?,
  standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
