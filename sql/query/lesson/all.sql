-- Every row of lessons, whatever its standing, in the order first written.
-- Columns: every column of lesson, in its order.
-- Units: at_least whole parts of the dimension of its kind; at_most whole parts of the dimension of its kind;
-- from_utc_ms milliseconds since 1970-01-01T00:00Z; from_zone name of a time zone; from_offset_s seconds east of
-- UTC; withdrawn_utc_ms milliseconds since 1970-01-01T00:00Z; withdrawn_zone name of a time zone; withdrawn_offset_s
-- seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, incident_id, what, question, kind, at_least, at_most, design_id, part_kind, from_utc_ms, from_zone,
  from_offset_s, "by", withdrawn_utc_ms, withdrawn_zone, withdrawn_offset_s, withdrawn_by, withdrawn_because,
  standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM lesson ORDER BY rowid;
