-- Columns: table, rowid, table referred to, number of the reference; a row for each reference to nothing.
PRAGMA foreign_key_check;
