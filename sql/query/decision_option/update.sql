-- Writes an option of a decision again, if it still has the revision it was changed from.
-- Parameters: every column of decision_option but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: money_minor minor units of its currency, ISO 4217; money_currency ISO 4217; minutes minutes of work; taken 1
-- yes, 0 no; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE decision_option SET
  decision_id = ?, name = ?, money_minor = ?, money_currency = ?, minutes = ?, days = ?, limit_id = ?, past =
  ?, taken = ?, note = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
