-- Writes marks of traces again, if they still have the revision they were changed from.
-- Parameters: every column of trace_mark but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: at_ms milliseconds after the first sample; lasted_ms milliseconds; thousandths thousandths of the channel's
-- unit; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE trace_mark SET
  trace_id = ?, kind = ?, at_ms = ?, lasted_ms = ?, channel = ?, thousandths = ?, words = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
