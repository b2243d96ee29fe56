-- Writes a line of the budget for the first time.
-- Parameters: every column of budget_line, in its order.
-- Units: day day, 2026-07-05; amount_minor minor units of its currency, ISO 4217; amount_currency ISO 4217; rate
-- decimal, home currency for one; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO budget_line (
  id, day, event_id, car_id, category, amount_minor, amount_currency, rate, note, standing, struck_because,
  made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
