-- Writes a run-on again, if it still has the revision it was changed from.
-- Parameters: every column of run_on but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: up_to in the unit of the limit's counter; past a limit of readings milliseconds of running;
-- at_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE run_on SET
  limit_id = ?, reading_limit_id = ?, part_id = ?, engine_id = ?, car_id = ?, up_to = ?, at_utc_ms = ?,
  at_zone = ?, at_offset_s = ?, "by" = ?, adviser = ?, advice = ?, why = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
