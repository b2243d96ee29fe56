-- Every hole of a face, whatever its standing, in the order first written.
-- Columns: every column of face_hole, in its order.
-- Units: x_nm nanometres from the front end; y_nm nanometres from the inlet edge; diameter_nm nanometres; made_at_ms
-- milliseconds since 1970-01-01T00:00Z.
SELECT
  id, outline_id, kind, number, x_nm, y_nm, diameter_nm, standing, struck_because, made_at_ms, made_by, amended_by,
  rev, checksum
FROM face_hole ORDER BY rowid;
