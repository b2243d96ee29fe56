-- Writes a batch on the shelf for the first time.
-- Parameters: every column of stock_batch, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO stock_batch (
  id, design_id, batch, supplier, use_by, shelf, least_to_keep, note, standing, struck_because, made_at_ms,
  made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
