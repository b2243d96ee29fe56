-- Every move of items, whatever its standing, in the order first written.
-- Columns: every column of stock_move, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; change count, below nothing when they went;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, stock_id, at_utc_ms, at_zone, at_offset_s, change, kind, part_id, job_id, "by", note, standing,
  struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM stock_move ORDER BY rowid;
