-- Every build, whatever its standing, in the order first written.
-- Columns: every column of build, in its order.
-- Units: zones zones opened, joined by semicolons; opened_utc_ms milliseconds since 1970-01-01T00:00Z;
-- closed_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, engine_id, number, zones, opened_utc_ms, opened_zone, opened_offset_s, closed_utc_ms, closed_zone,
  closed_offset_s, signed_by, note, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM build ORDER BY rowid;
