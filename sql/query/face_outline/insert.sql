-- Writes outline of a face for the first time.
-- Parameters: every column of face_outline, in its order.
-- Units: length_nm nanometres; width_nm nanometres; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO face_outline (
  id, design_id, length_nm, width_nm, front_end, exhaust, source, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
