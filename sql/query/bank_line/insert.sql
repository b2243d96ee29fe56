-- Writes a line of a statement for the first time.
-- Parameters: every column of bank_line, in its order.
-- Units: day day, 2026-07-05; amount_minor minor units of its currency, ISO 4217; amount_currency ISO 4217;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO bank_line (
  id, account, day, amount_minor, amount_currency, text, reference, nth, source, aside, standing,
  struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
