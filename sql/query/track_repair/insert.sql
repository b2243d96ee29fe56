-- Writes a track repair for the first time.
-- Parameters: every column of track_repair, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO track_repair (
  id, build_id, went_back, tool_id, second, note, standing, struck_because, made_at_ms, made_by, amended_by,
  rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
