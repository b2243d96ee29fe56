-- Every part design, whatever its standing, in the order first written.
-- Columns: every column of part_design, in its order.
-- Units: single_use 1 yes, 0 no; can_wreck 1 yes, 0 no; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, name, kind, maker, part_number, single_use, can_wreck, specification, gasket_class, standing, struck_because,
  made_at_ms, made_by, amended_by, rev, checksum
FROM part_design ORDER BY rowid;
