-- Writes an option of a decision for the first time.
-- Parameters: every column of decision_option, in its order.
-- Units: money_minor minor units of its currency, ISO 4217; money_currency ISO 4217; minutes minutes of work; taken 1
-- yes, 0 no; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO decision_option (
  id, decision_id, name, money_minor, money_currency, minutes, days, limit_id, past, taken, note, standing,
  struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
