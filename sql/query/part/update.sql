-- Writes a part again, if it still has the revision it was changed from.
-- Parameters: every column of part but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: bought_on day, 2026-07-05; made_on day, 2026-07-05; use_by day, 2026-07-05;
-- split_at_utc_ms milliseconds since 1970-01-01T00:00Z; _offset_s seconds east of UTC;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE part SET
  mark = ?, design_id = ?, batch = ?, supplier = ?, bought_on = ?, made_on = ?, use_by = ?, of_set_id = ?,
  member_mark = ?, split_at_utc_ms = ?, split_at_zone = ?, split_at_offset_s = ?, note = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
