-- Writes actions again, if they still have the revision they were changed from.
-- Parameters: every column of case_action but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: due day, 2026-07-05; done_utc_ms milliseconds since 1970-01-01T00:00Z; done_zone name of a time zone;
-- done_offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE case_action SET
  incident_id = ?, cause_id = ?, kind = ?, what = ?, who = ?, due = ?, done_utc_ms = ?, done_zone = ?, done_offset_s
  = ?, note = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
