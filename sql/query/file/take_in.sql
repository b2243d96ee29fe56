-- Brings what lies in the log into the file as far as readers let it. Columns: busy, pages in the log, pages moved.
PRAGMA wal_checkpoint(PASSIVE);
