-- Every team, whatever its standing, in the order first written.
-- Columns: every column of team, in its order.
-- Units: zone name of a time zone; running_above_rpm revolutions per minute;
-- loaded_above_rpm revolutions per minute; high_speed_above_rpm revolutions per minute;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, name, zone, currency, running_above_rpm, loaded_above_rpm, high_speed_above_rpm, standing,
  struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM team ORDER BY rowid;
