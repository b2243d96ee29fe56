-- Writes the team again, if it still has the revision it was changed from.
-- Parameters: every column of team but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: zone name of a time zone; running_above_rpm revolutions per minute;
-- loaded_above_rpm revolutions per minute; high_speed_above_rpm revolutions per minute;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE team SET
  name = ?, zone = ?, currency = ?, running_above_rpm = ?, loaded_above_rpm = ?, high_speed_above_rpm = ?,
  standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
