-- What a logbook holds, at a glance.
-- Columns: how many records; clock_ms of the last change, milliseconds since 1970-01-01T00:00Z, null when there is none.
SELECT
  (SELECT count(*) FROM (SELECT DISTINCT table_name, record_id FROM amendment)),
  (SELECT max(clock_ms) FROM amendment);
