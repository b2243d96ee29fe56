-- Every line of a face, whatever its standing, in the order first written.
-- Columns: every column of face_line, in its order.
-- Units: goes_nm nanometres; stops_nm nanometres; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, look_id, line, number, goes_nm, stops_nm, standing, struck_because, made_at_ms, made_by, amended_by, rev,
  checksum
FROM face_line ORDER BY rowid;
