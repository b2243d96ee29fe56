-- When something was first written after a change, in the order of writing.
-- Parameters: the hash of that change; one that is not there comes before everything.
-- Columns: clock_ms, milliseconds since 1970-01-01T00:00Z; no row when nothing was.
SELECT clock_ms FROM amendment
WHERE rowid > coalesce((SELECT rowid FROM amendment WHERE hash = ?), 0) ORDER BY rowid LIMIT 1;
