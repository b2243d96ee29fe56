-- Writes a line of a face for the first time.
-- Parameters: every column of face_line, in its order.
-- Units: goes_nm nanometres; stops_nm nanometres; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO face_line (
  id, look_id, line, number, goes_nm, stops_nm, standing, struck_because, made_at_ms, made_by, amended_by, rev,
  checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
