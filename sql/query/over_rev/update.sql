-- Writes an over-rev again, if it still has the revision it was changed from.
-- Parameters: every column of over_rev but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: peak_rpm revolutions per minute; lasted_ms milliseconds; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE over_rev SET
  run_id = ?, peak_rpm = ?, lasted_ms = ?, gear = ?, "from" = ?, note = ?, standing = ?, struck_because = ?,
  amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
