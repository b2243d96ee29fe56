-- Every line of a parts list, whatever its standing, in the order first written.
-- Columns: every column of listed_part, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, position_id, engine_id, design_id, valid_from, valid_to, standing, struck_because, made_at_ms,
  made_by, amended_by, rev, checksum
FROM listed_part ORDER BY rowid;
