-- Writes a planned run for the first time.
-- Parameters: every column of planned_run, in its order.
-- Units: day day, 2026-07-05; out time of day, 15:00; expected_ms milliseconds;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO planned_run (
  id, event_id, ordinal, kind, name, day, out, expected_ms, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
