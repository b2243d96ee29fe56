-- Every told running, whatever its standing, in the order first written.
-- Columns: every column of told_running, in its order.
-- Units: from_utc_ms milliseconds since 1970-01-01T00:00Z; to_utc_ms milliseconds since 1970-01-01T00:00Z;
-- likely_ms milliseconds; lowest_ms milliseconds; highest_ms milliseconds; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, engine_id, from_utc_ms, from_zone, from_offset_s, to_utc_ms, to_zone, to_offset_s, likely_ms, lowest_ms,
  highest_ms, told_by, how_he_knows, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM told_running ORDER BY rowid;
