-- Writes a hole of a face for the first time.
-- Parameters: every column of face_hole, in its order.
-- Units: x_nm nanometres from the front end; y_nm nanometres from the inlet edge; diameter_nm nanometres; made_at_ms
-- milliseconds since 1970-01-01T00:00Z.
INSERT INTO face_hole (
  id, outline_id, kind, number, x_nm, y_nm, diameter_nm, standing, struck_because, made_at_ms, made_by, amended_by,
  rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
