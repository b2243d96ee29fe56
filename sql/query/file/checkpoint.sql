-- Brings what lies in the log into the file. Columns: busy, pages in the log, pages moved.
PRAGMA wal_checkpoint(TRUNCATE);
