-- Writes a line of cost for the first time.
-- Parameters: every column of cost_line, in its order.
-- Units: day day, 2026-07-05; planned 1 yes, 0 no; allocated 1 yes, 0 no; paid_minor minor units of its currency, ISO
-- 4217; paid_currency ISO 4217; tax_minor minor units of its currency, ISO 4217; tax_currency ISO 4217;
-- recovered_minor minor units of its currency, ISO 4217; recovered_currency ISO 4217; carried_minor minor units of
-- its currency, ISO 4217; carried_currency ISO 4217; carried_until day, 2026-07-05; carried_used day, 2026-07-05;
-- rate decimal, home currency for one; minutes minutes of work; refund_by day, 2026-07-05; charged_on day,
-- 2026-07-05; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO cost_line (
  id, day, what, category, basis, event_id, car_id, engine_id, incident_id, part_id, work_id, build_id,
  planned, allocated, paid_minor, paid_currency, tax_minor, tax_currency, recovered_minor, recovered_currency,
  carried_minor, carried_currency, carried_until, carried_used, carried_to_id, rate, minutes, supplier,
  invoice, refund_by, customer, charged_on, note, standing, struck_because, made_at_ms, made_by, amended_by,
  rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?,
  ?, ?, ?, ?
);
