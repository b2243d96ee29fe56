-- Writes a rate of an hour again, if it still has the revision it was changed from.
-- Parameters: every column of hour_rate but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: amount_minor minor units of its currency, ISO 4217; amount_currency ISO 4217; from day, 2026-07-05;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE hour_rate SET
  kind = ?, amount_minor = ?, amount_currency = ?, "from" = ?, note = ?, standing = ?, struck_because = ?,
  amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
