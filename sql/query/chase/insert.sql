-- Writes a chase for the first time.
-- Parameters: every column of chase, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO chase (
  id, sent_out_id, at_utc_ms, at_zone, at_offset_s, answer, promised, "by", standing, struck_because,
  made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
