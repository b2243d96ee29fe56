-- Writes trials again, if they still have the revision they were changed from.
-- Parameters: every column of trial but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: "from" day, 2026-07-05; ended day, 2026-07-05; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE trial SET
  name = ?, tried_id = ?, usual_id = ?, hoped = ?, "from" = ?, "by" = ?, ended = ?, verdict = ?, because = ?,
  judged_by = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
