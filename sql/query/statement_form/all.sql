-- Every form of a statement, whatever its standing, in the order first written.
-- Columns: every column of statement_form, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, name, headings, day_column, day_pattern, amount_column, in_column, out_column, text_columns,
  reference_column, currency_column, currency, decimal_sign, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
FROM statement_form ORDER BY rowid;
