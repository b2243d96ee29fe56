-- Columns: a number that changes when another connection has written.
PRAGMA data_version;
