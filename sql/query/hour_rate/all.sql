-- Every rate of an hour, whatever its standing, in the order first written.
-- Columns: every column of hour_rate, in its order.
-- Units: amount_minor minor units of its currency, ISO 4217; amount_currency ISO 4217; from day, 2026-07-05;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, kind, amount_minor, amount_currency, "from", note, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
FROM hour_rate ORDER BY rowid;
