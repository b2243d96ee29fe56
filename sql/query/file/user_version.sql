-- Columns: the version of the schema; 0 in a file that has none.
PRAGMA user_version;
