-- Every part, whatever its standing, in the order first written.
-- Columns: every column of part, in its order.
-- Units: bought_on day, 2026-07-05; made_on day, 2026-07-05; use_by day, 2026-07-05;
-- split_at_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, mark, design_id, batch, supplier, bought_on, made_on, use_by, of_set_id, member_mark, split_at_utc_ms,
  split_at_zone, split_at_offset_s, note, standing, struck_because, made_at_ms, made_by, amended_by, rev,
  checksum
FROM part ORDER BY rowid;
