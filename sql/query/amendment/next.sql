-- The next amendment in the order they lie in the file, for one that cannot be read from end to end.
-- Parameters: rowid after which to look. Columns: every column of amendment, in its order; then its rowid.
-- Units: clock_ms milliseconds since 1970-01-01T00:00Z; before and after JSON objects of column values.
SELECT
  id, device, number, clock_ms, clock_tick, who, change_id, table_name, record_id, before, after, why,
  schema_version, previous_hash, hash, rowid
FROM amendment WHERE rowid > ? ORDER BY rowid LIMIT 1;
