-- Every row of figures for the fit at speed, whatever its standing, in the order first written.
-- Columns: every column of speed_figures, in its order.
-- Units: block_hot_mk millikelvin; crank_hot_mk millikelvin; rods_hot_mk millikelvin; pistons_hot_mk millikelvin;
-- block_cold_mk millikelvin; pistons_cold_mk millikelvin; main_spacing_nm nanometres; margin_nm nanometres;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, design_id, block, crank, rods, pistons, block_hot_mk, crank_hot_mk, rods_hot_mk, pistons_hot_mk,
  block_cold_mk, pistons_cold_mk, main_spacing_nm, margin_nm, source, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
FROM speed_figures ORDER BY rowid;
