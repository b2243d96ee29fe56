-- Every maker's notice, whatever its standing, in the order first written.
-- Columns: every column of notice, in its order.
-- Units: holds 1 yes, 0 no; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, number, maker, dated, design_id, batch, marks, asks, holds, note, standing, struck_because,
  made_at_ms, made_by, amended_by, rev, checksum
FROM notice ORDER BY rowid;
