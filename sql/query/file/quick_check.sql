-- Reads every page. Columns: ok, or the first fault found.
PRAGMA quick_check(1);
