-- Writes steps of running in again, if they still have the revision they were changed from.
-- Parameters: every column of run_in_step but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: speed_rpm revolutions a minute; load_permille thousandths of full load; lasted_ms milliseconds; made_at_ms
-- milliseconds since 1970-01-01T00:00Z.
UPDATE run_in_step SET
  run_id = ?, number = ?, speed_rpm = ?, load_permille = ?, lasted_ms = ?, words = ?, standing = ?, struck_because =
  ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
