-- Writes a part design for the first time.
-- Parameters: every column of part_design, in its order.
-- Units: single_use 1 yes, 0 no; can_wreck 1 yes, 0 no; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO part_design (
  id, name, kind, maker, part_number, single_use, can_wreck, specification, gasket_class, standing, struck_because,
  made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
