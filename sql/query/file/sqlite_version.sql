-- Columns: the version of SQLite that runs.
SELECT sqlite_version();
