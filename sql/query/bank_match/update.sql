-- Writes a match of a line of a statement again, if it still has the revision it was changed from.
-- Parameters: every column of bank_match but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: amount_minor minor units of its currency, ISO 4217; amount_currency ISO 4217; made_at_ms milliseconds since
-- 1970-01-01T00:00Z.
UPDATE bank_match SET
  bank_id = ?, cost_id = ?, income_id = ?, amount_minor = ?, amount_currency = ?, standing = ?, struck_because
  = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
