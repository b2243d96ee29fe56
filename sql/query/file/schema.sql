-- The schema as text, but for the tables in which migrations and statistics are noted down.
-- Columns: type, name, sql.
SELECT type, name, sql FROM sqlite_schema
WHERE sql IS NOT NULL AND name NOT LIKE 'sqlite\_stat%' ESCAPE '\'
  AND NOT (tbl_name = 'flyway_schema_history' AND type IN ('table', 'index'))
ORDER BY type, name;
