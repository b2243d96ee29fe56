-- Writes a prevention again, if it still has the revision it was changed from.
-- Parameters: every column of prevention but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: money_minor minor units of its currency, ISO 4217; money_currency ISO 4217; minutes minutes of work;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE prevention SET
  incident_id = ?, what = ?, money_minor = ?, money_currency = ?, minutes = ?, note = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
