-- Writes exponents of speed again, if they still have the revision they were changed from.
-- Parameters: every column of rev_exponent but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: reference_rpm revolutions a minute; hundredths hundredths; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE rev_exponent SET
  design_id = ?, part_kind = ?, reference_rpm = ?, hundredths = ?, source = ?, standing = ?, struck_because = ?,
  amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
