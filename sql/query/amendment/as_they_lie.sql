-- Every amendment, in the order they lie in the file, to be read once from end to end. All but the longest columns come
-- as one text, a unit separator between them: a driver hands over one text in a fraction of the time of twelve.
-- Columns: the rest, in the order of their names; before; after; hash.
-- Units: clock_ms milliseconds since 1970-01-01T00:00Z; before and after JSON objects of column values.
SELECT
  concat_ws(char(31), change_id, clock_ms, clock_tick, device, id, number, previous_hash, record_id, schema_version,
    table_name, who, why),
  before, after, hash
FROM amendment ORDER BY rowid;
