-- Writes what a skim found for the first time.
-- Parameters: every column of skim, in its order.
-- Units: front_exhaust_nm nanometres; front_inlet_nm nanometres; rear_exhaust_nm nanometres; rear_inlet_nm
-- nanometres; flat_after_nm nanometres; chamber_before_ul microlitres; chamber_after_ul microlitres; made_at_ms
-- milliseconds since 1970-01-01T00:00Z.
INSERT INTO skim (
  id, work_id, face, front_exhaust_nm, front_inlet_nm, rear_exhaust_nm, rear_inlet_nm, flat_after_nm, ra_nanometres,
  rz_nanometres, chamber_before_ul, chamber_after_ul, retimed, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
