-- Writes a form of a statement for the first time.
-- Parameters: every column of statement_form, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO statement_form (
  id, name, headings, day_column, day_pattern, amount_column, in_column, out_column, text_columns,
  reference_column, currency_column, currency, decimal_sign, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
