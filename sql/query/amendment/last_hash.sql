-- The change written last.
-- Columns: hash; no row when nothing was written.
SELECT hash FROM amendment ORDER BY rowid DESC LIMIT 1;
