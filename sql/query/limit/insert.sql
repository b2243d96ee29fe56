-- Writes a limit for the first time.
-- Parameters: every column of limit, in its order.
-- Units: amount in the unit of the counter; valid_from day, 2026-07-05; valid_to day, 2026-07-05;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO "limit" (
  id, name, action, design_id, part_kind, part_design_id, part_id, engine_id, car_id, counter, amount, rank,
  source, valid_from, valid_to, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
