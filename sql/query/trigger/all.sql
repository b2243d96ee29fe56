-- Every trigger, whatever its standing, in the order first written.
-- Columns: every column of trigger, in its order.
-- Units: figure in the unit of the kind of trigger; lasting_ms milliseconds; holds words joined by semicolons;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, name, kind, design_id, figure, lasting_ms, reading_kind, grade, holds, asks, rank, source, valid_from,
  valid_to, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM "trigger" ORDER BY rowid;
