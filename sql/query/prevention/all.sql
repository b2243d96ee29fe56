-- Every prevention, whatever its standing, in the order first written.
-- Columns: every column of prevention, in its order.
-- Units: money_minor minor units of its currency, ISO 4217; money_currency ISO 4217; minutes minutes of work;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, incident_id, what, money_minor, money_currency, minutes, note, standing, struck_because, made_at_ms,
  made_by, amended_by, rev, checksum
FROM prevention ORDER BY rowid;
