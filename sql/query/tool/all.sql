-- Every tool, whatever its standing, in the order first written.
-- Columns: every column of tool, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, mark, kind, note, out_of_use, why, standing, struck_because, made_at_ms, made_by, amended_by, rev,
  checksum
FROM tool ORDER BY rowid;
