-- Writes a job again, if it still has the revision it was changed from.
-- Parameters: every column of job but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: what Work planned.; minutes_expected minutes of work; minutes_spent minutes of work;
-- asked_utc_ms milliseconds since 1970-01-01T00:00Z; done_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE job SET
  what = ?, engine_id = ?, part_id = ?, car_id = ?, before_id = ?, who = ?, minutes_expected = ?,
  minutes_spent = ?, waiting_for = ?, run_id = ?, asked_utc_ms = ?, asked_zone = ?, asked_offset_s = ?,
  "by" = ?, done_utc_ms = ?, done_zone = ?, done_offset_s = ?, result = ?, standing = ?, struck_because = ?,
  amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
