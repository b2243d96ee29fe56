-- Writes lessons again, if they still have the revision they were changed from.
-- Parameters: every column of lesson but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: at_least whole parts of the dimension of its kind; at_most whole parts of the dimension of its kind;
-- from_utc_ms milliseconds since 1970-01-01T00:00Z; from_zone name of a time zone; from_offset_s seconds east of
-- UTC; withdrawn_utc_ms milliseconds since 1970-01-01T00:00Z; withdrawn_zone name of a time zone; withdrawn_offset_s
-- seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE lesson SET
  incident_id = ?, what = ?, question = ?, kind = ?, at_least = ?, at_most = ?, design_id = ?, part_kind = ?,
  from_utc_ms = ?, from_zone = ?, from_offset_s = ?, "by" = ?, withdrawn_utc_ms = ?, withdrawn_zone = ?,
  withdrawn_offset_s = ?, withdrawn_by = ?, withdrawn_because = ?, standing = ?, struck_because = ?, amended_by = ?,
  rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
