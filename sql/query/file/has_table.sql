-- Whether there is an ordinary table of a name, none of whose columns is worked out from others.
-- Parameters: the name. Columns: 1 when there is, 0 when not.
SELECT count(*) FROM sqlite_schema
WHERE type = 'table' AND name = ?1 AND sql NOT LIKE 'CREATE VIRTUAL%'
  AND NOT EXISTS (SELECT 1 FROM pragma_table_xinfo(?1) WHERE hidden <> 0);
