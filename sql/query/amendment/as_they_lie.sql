-- Every amendment, in the order they lie in the file, to be read once from end to end.
-- Columns: every column of amendment, in its order.
-- Units: clock_ms milliseconds since 1970-01-01T00:00Z; before and after JSON objects of column values.
SELECT
  id, device, number, clock_ms, clock_tick, who, change_id, table_name, record_id, before, after, why,
  schema_version, previous_hash, hash
FROM amendment ORDER BY rowid;
