-- Writes proofs wanted again, if they still have the revision they were changed from.
-- Parameters: every column of proof_wanted but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: after_ms milliseconds; set_utc_ms milliseconds since 1970-01-01T00:00Z; set_zone name of a time zone;
-- set_offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE proof_wanted SET
  incident_id = ?, action_id = ?, kind = ?, what = ?, after_ms = ?, times = ?, reading = ?, set_utc_ms = ?, set_zone
  = ?, set_offset_s = ?, "by" = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
