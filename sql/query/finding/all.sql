-- Every row of findings, whatever its standing, in the order first written.
-- Columns: every column of finding, in its order.
-- Units: x_nm nanometres from the front end; y_nm nanometres from the inlet edge; at_utc_ms milliseconds since
-- 1970-01-01T00:00Z; at_zone name of a time zone; at_offset_s seconds east of UTC; made_at_ms milliseconds since
-- 1970-01-01T00:00Z; around_degrees degrees; out_percent hundredths.
SELECT
  id, incident_id, engine_id, build_id, part_id, member, place, number, spot, mark, how, face, x_nm, y_nm,
  reading_id, at_utc_ms, at_zone, at_offset_s, "by", words, around_degrees, out_percent, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
FROM finding ORDER BY rowid;
