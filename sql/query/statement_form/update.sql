-- Writes a form of a statement again, if it still has the revision it was changed from.
-- Parameters: every column of statement_form but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE statement_form SET
  name = ?, headings = ?, day_column = ?, day_pattern = ?, amount_column = ?, in_column = ?, out_column = ?,
  text_columns = ?, reference_column = ?, currency_column = ?, currency = ?, decimal_sign = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
