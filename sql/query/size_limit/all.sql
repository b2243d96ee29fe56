-- Every limit of size, whatever its standing, in the order first written.
-- Columns: every column of size_limit, in its order.
-- Units: at_least whole parts of the dimension of its kind; at_most whole parts of the dimension of its kind;
-- aim_least whole parts of the dimension of its kind; aim_most whole parts of the dimension of its kind; valid_from
-- day, 2026-07-05; valid_to day, 2026-07-05; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, kind, spot, design_id, part_design_id, at_least, at_most, aim_least, aim_most, rank, source, valid_from,
  valid_to, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM size_limit ORDER BY rowid;
