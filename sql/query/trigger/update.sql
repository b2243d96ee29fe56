-- Writes a trigger again, if it still has the revision it was changed from.
-- Parameters: every column of trigger but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: figure in the unit of the kind of trigger; lasting_ms milliseconds; holds words joined by semicolons;
-- made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE "trigger" SET
  name = ?, kind = ?, design_id = ?, figure = ?, lasting_ms = ?, reading_kind = ?, grade = ?, holds = ?,
  asks = ?, rank = ?, source = ?, valid_from = ?, valid_to = ?, standing = ?, struck_because = ?,
  amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
