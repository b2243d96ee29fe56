-- Every person told of a maker's notice, whatever its standing, in the order first written.
-- Columns: every column of notice_told, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, notice_id, who, at_utc_ms, at_zone, at_offset_s, how, "by", standing, struck_because, made_at_ms,
  made_by, amended_by, rev, checksum
FROM notice_told ORDER BY rowid;
