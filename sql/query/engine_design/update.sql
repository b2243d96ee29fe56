-- Writes an engine design again, if it still has the revision it was changed from.
-- Parameters: every column of engine_design but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: bore_nm nanometres; stroke_nm nanometres; rod_length_nm nanometres;
-- red_line_rpm revolutions per minute; over_rev_above_rpm revolutions per minute;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE engine_design SET
  name = ?, cylinders = ?, layout = ?, bore_nm = ?, stroke_nm = ?, rod_length_nm = ?, firing_order = ?,
  measuring_order = ?, red_line_rpm = ?, over_rev_above_rpm = ?, note = ?, mains = ?, standing = ?, struck_because = ?,
  amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
