-- The tables that amendments name.
-- Columns: table_name.
SELECT DISTINCT table_name FROM amendment ORDER BY table_name;
