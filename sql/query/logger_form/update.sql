-- Writes forms of loggers again, if they still have the revision they were changed from.
-- Parameters: every column of logger_form but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE logger_form SET
  name = ?, headings = ?, form = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
