-- Writes tests of causes again, if they still have the revision they were changed from.
-- Parameters: every column of cause_test but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: due day, 2026-07-05; done_utc_ms milliseconds since 1970-01-01T00:00Z; done_zone name of a time zone;
-- done_offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE cause_test SET
  cause_id = ?, what = ?, who = ?, due = ?, done_utc_ms = ?, done_zone = ?, done_offset_s = ?, found = ?, standing =
  ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
