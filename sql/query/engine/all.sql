-- Every engine, whatever its standing, in the order first written.
-- Columns: every column of engine, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, number, design_id, owner, note, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM engine ORDER BY rowid;
