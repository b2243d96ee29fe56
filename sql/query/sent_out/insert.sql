-- Writes a thing out with others for the first time.
-- Parameters: every column of sent_out, in its order.
-- Units: from_utc_ms milliseconds since 1970-01-01T00:00Z; back_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO sent_out (
  id, part_id, engine_id, design_id, count, sent_to, asked, target, from_utc_ms, from_zone, from_offset_s,
  promised, back_utc_ms, back_zone, back_offset_s, result, "by", note, standing, struck_because, made_at_ms,
  made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
