-- The run begun last, of those that count. Reads files of every form there was.
-- Columns: start_utc_ms, milliseconds since 1970-01-01T00:00Z; start_zone, name of a time zone.
SELECT start_utc_ms, start_zone FROM run
WHERE standing = 'in force' AND perhaps_same_id IS NULL ORDER BY start_utc_ms DESC LIMIT 1;
