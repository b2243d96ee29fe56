-- Every share of a cost, whatever its standing, in the order first written.
-- Columns: every column of cost_share, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, line_id, car_id, parts, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM cost_share ORDER BY rowid;
