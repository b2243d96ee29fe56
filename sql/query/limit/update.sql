-- Writes a limit again, if it still has the revision it was changed from.
-- Parameters: every column of limit but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: amount in the unit of the counter; valid_from day, 2026-07-05; valid_to day, 2026-07-05;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE "limit" SET
  name = ?, action = ?, design_id = ?, part_kind = ?, part_design_id = ?, part_id = ?, engine_id = ?,
  car_id = ?, counter = ?, amount = ?, rank = ?, source = ?, valid_from = ?, valid_to = ?, standing = ?,
  struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
