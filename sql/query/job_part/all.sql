-- Every part kept for a job, whatever its standing, in the order first written.
-- Columns: every column of job_part, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, job_id, part_id, stock_id, count, standing, struck_because, made_at_ms, made_by, amended_by, rev,
  checksum
FROM job_part ORDER BY rowid;
