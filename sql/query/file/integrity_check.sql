-- Reads every page and compares every index. Columns: ok, or a fault a row.
PRAGMA integrity_check(20);
