-- Writes a limit of size again, if it still has the revision it was changed from.
-- Parameters: every column of size_limit but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: at_least whole parts of the dimension of its kind; at_most whole parts of the dimension of its kind;
-- aim_least whole parts of the dimension of its kind; aim_most whole parts of the dimension of its kind; valid_from
-- day, 2026-07-05; valid_to day, 2026-07-05; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE size_limit SET
  kind = ?, spot = ?, design_id = ?, part_design_id = ?, at_least = ?, at_most = ?, aim_least = ?, aim_most = ?, rank =
  ?, source = ?, valid_from = ?, valid_to = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?,
  checksum = ?
WHERE id = ? AND rev = ?;
