-- Every match of a line of a statement, whatever its standing, in the order first written.
-- Columns: every column of bank_match, in its order.
-- Units: amount_minor minor units of its currency, ISO 4217; amount_currency ISO 4217; made_at_ms milliseconds since
-- 1970-01-01T00:00Z.
SELECT
  id, bank_id, cost_id, income_id, amount_minor, amount_currency, standing, struck_because, made_at_ms,
  made_by, amended_by, rev, checksum
FROM bank_match ORDER BY rowid;
