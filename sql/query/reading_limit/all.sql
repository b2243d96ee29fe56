-- Every limit of readings, whatever its standing, in the order first written.
-- Columns: every column of reading_limit, in its order.
-- Units: at_least in the unit of the kind of reading; at_most in the unit of the kind of reading;
-- change_at_most in the unit of the kind of reading; fall_at_most hundredths of a percent of the baseline;
-- every_ms milliseconds; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, name, kind, design_id, part_kind, engine_id, at_least, at_most, change_at_most, fall_at_most,
  worst_grade, every_ms, rank, source, valid_from, valid_to, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
FROM reading_limit ORDER BY rowid;
