-- Writes a decision again, if it still has the revision it was changed from.
-- Parameters: every column of decision but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: asked_utc_ms milliseconds since 1970-01-01T00:00Z; decided_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE decision SET
  mark = ?, question = ?, asked_utc_ms = ?, asked_zone = ?, asked_offset_s = ?, engine_id = ?, car_id = ?,
  event_id = ?, answers_id = ?, adviser = ?, advice = ?, decided_utc_ms = ?, decided_zone = ?,
  decided_offset_s = ?, decided_by = ?, dissent = ?, outcome = ?, verdict = ?, led_to_id = ?, note = ?,
  standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
