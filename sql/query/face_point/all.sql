-- Every reading of a face, whatever its standing, in the order first written.
-- Columns: every column of face_point, in its order.
-- Units: x_nm nanometres from the front end; y_nm nanometres from the inlet edge; depth_nm nanometres, below 0 where
-- it stands proud; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, look_id, x_nm, y_nm, depth_nm, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM face_point ORDER BY rowid;
