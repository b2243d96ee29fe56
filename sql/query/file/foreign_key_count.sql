-- How many references lead to nothing.
-- Columns: the number.
SELECT count(*) FROM pragma_foreign_key_check;
