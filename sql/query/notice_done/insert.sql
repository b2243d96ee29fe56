-- Writes an answer to a maker's notice for the first time.
-- Parameters: every column of notice_done, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO notice_done (
  id, notice_id, part_id, at_utc_ms, at_zone, at_offset_s, done, "by", standing, struck_because, made_at_ms,
  made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
