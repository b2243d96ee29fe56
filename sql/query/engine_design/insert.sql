-- Writes an engine design for the first time.
-- Parameters: every column of engine_design, in its order.
-- Units: bore_nm nanometres; stroke_nm nanometres; rod_length_nm nanometres;
-- red_line_rpm revolutions per minute; over_rev_above_rpm revolutions per minute;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO engine_design (
  id, name, cylinders, layout, bore_nm, stroke_nm, rod_length_nm, firing_order, measuring_order, red_line_rpm,
  over_rev_above_rpm, note, mains, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
