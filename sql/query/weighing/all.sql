-- Every row of weighings of findings, whatever its standing, in the order first written.
-- Columns: every column of weighing, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, finding_id, cause_id, speaks, why, "by", standing, struck_because, made_at_ms, made_by, amended_by, rev,
  checksum
FROM weighing ORDER BY rowid;
