-- Writes a line of the budget again, if it still has the revision it was changed from.
-- Parameters: every column of budget_line but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: day day, 2026-07-05; amount_minor minor units of its currency, ISO 4217; amount_currency ISO 4217; rate
-- decimal, home currency for one; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE budget_line SET
  day = ?, event_id = ?, car_id = ?, category = ?, amount_minor = ?, amount_currency = ?, rate = ?, note = ?,
  standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
