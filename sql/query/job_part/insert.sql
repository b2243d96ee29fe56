-- Writes a part kept for a job for the first time.
-- Parameters: every column of job_part, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO job_part (
  id, job_id, part_id, stock_id, count, standing, struck_because, made_at_ms, made_by, amended_by, rev,
  checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
