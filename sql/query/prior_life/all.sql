-- Every prior life, whatever its standing, in the order first written.
-- Columns: every column of prior_life, in its order.
-- Units: amount in the unit of the counter; lowest in the unit of the counter;
-- highest in the unit of the counter; at_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, part_id, engine_id, counter, kind, amount, lowest, highest, at_utc_ms, at_zone, at_offset_s, words,
  standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM prior_life ORDER BY rowid;
