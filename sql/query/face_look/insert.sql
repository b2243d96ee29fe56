-- Writes a look at a face for the first time.
-- Parameters: every column of face_look, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; at_zone name of a time zone; at_offset_s seconds east of
-- UTC; finest_nm nanometres; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO face_look (
  id, part_id, face, at_utc_ms, at_zone, at_offset_s, method, finest_nm, tool_id, "by", note, standing,
  struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
