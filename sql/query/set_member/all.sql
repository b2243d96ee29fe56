-- Every set member, whatever its standing, in the order first written.
-- Columns: every column of set_member, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, set_id, mark, ordinal, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM set_member ORDER BY rowid;
