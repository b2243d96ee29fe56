-- Every line of income, whatever its standing, in the order first written.
-- Columns: every column of income_line, in its order.
-- Units: day day, 2026-07-05; amount_minor minor units of its currency, ISO 4217; amount_currency ISO 4217; rate
-- decimal, home currency for one; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, day, what, kind, event_id, car_id, amount_minor, amount_currency, rate, "from", note, standing,
  struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM income_line ORDER BY rowid;
