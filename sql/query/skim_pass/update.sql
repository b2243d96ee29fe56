-- Writes a pass of a skim again, if it still has the revision it was changed from.
-- Parameters: every column of skim_pass but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: depth_nm nanometres; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE skim_pass SET
  skim_id = ?, number = ?, depth_nm = ?, shadow = ?, "where" = ?, standing = ?, struck_because = ?, amended_by = ?,
  rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
