-- Writes a check that was signed again, if it still has the revision it was changed from.
-- Parameters: every column of signed_check but id, made_at_ms and made_by, in its order; then id; then the revision before.
-- Units: value whole parts of the dimension of its kind; at_least whole parts of the dimension of its kind; at_most
-- whole parts of the dimension of its kind; made_at_ms milliseconds since 1970-01-01T00:00Z.
UPDATE signed_check SET
  sign_off_id = ?, kind = ?, number = ?, spot = ?, value = ?, at_least = ?, at_most = ?, source = ?, verdict =
  ?, accepted = ?, standing = ?, struck_because = ?, amended_by = ?, rev = ?, checksum = ?
WHERE id = ? AND rev = ?;
