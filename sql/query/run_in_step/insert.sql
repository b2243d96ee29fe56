-- Writes steps of running in for the first time.
-- Parameters: every column of run_in_step, in its order.
-- Units: speed_rpm revolutions a minute; load_permille thousandths of full load; lasted_ms milliseconds; made_at_ms
-- milliseconds since 1970-01-01T00:00Z.
INSERT INTO run_in_step (
  id, run_id, number, speed_rpm, load_permille, lasted_ms, words, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
