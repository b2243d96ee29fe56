-- Writes a season for the first time.
-- Parameters: every column of season, in its order.
-- Units: first_day day, 2026-07-05; last_day day, 2026-07-05; closed_utc_ms milliseconds since 1970-01-01T00:00Z;
-- reported_budget_minor minor units of its currency, ISO 4217; reported_budget_currency ISO 4217;
-- reported_spent_minor minor units of its currency, ISO 4217; reported_spent_currency ISO 4217; reported_income_minor
-- minor units of its currency, ISO 4217; reported_income_currency ISO 4217; reported_cash_minor minor units of its
-- currency, ISO 4217; reported_cash_currency ISO 4217; reported_labour_minor minor units of its currency, ISO 4217;
-- reported_labour_currency ISO 4217; reported_missed_minor minor units of its currency, ISO 4217;
-- reported_missed_currency ISO 4217; reported_running_ms milliseconds; _offset_s seconds east of UTC; made_at_ms
-- milliseconds since 1970-01-01T00:00Z.
INSERT INTO season (
  id, name, first_day, last_day, closed_utc_ms, closed_zone, closed_offset_s, "by", reported_budget_minor,
  reported_budget_currency, reported_spent_minor, reported_spent_currency, reported_income_minor,
  reported_income_currency, reported_cash_minor, reported_cash_currency, reported_labour_minor,
  reported_labour_currency, reported_missed_minor, reported_missed_currency, reported_running_ms, note,
  standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
