-- Writes a share of a cost for the first time.
-- Parameters: every column of cost_share, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO cost_share (
  id, line_id, car_id, parts, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
