-- Writes a mark on a face for the first time.
-- Parameters: every column of face_mark, in its order.
-- Units: x_nm nanometres from the front end; y_nm nanometres from the inlet edge; along_nm nanometres; across_nm
-- nanometres; depth_nm nanometres, below 0 where it stands proud; made_at_ms milliseconds since 1970-01-01T00:00Z;
-- outline corners in millimetres.
INSERT INTO face_mark (
  id, look_id, kind, x_nm, y_nm, along_nm, across_nm, outline, depth_nm, words, standing, struck_because, made_at_ms,
  made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
