-- Writes a check that was signed for the first time.
-- Parameters: every column of signed_check, in its order.
-- Units: value whole parts of the dimension of its kind; at_least whole parts of the dimension of its kind; at_most
-- whole parts of the dimension of its kind; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO signed_check (
  id, sign_off_id, kind, number, spot, value, at_least, at_most, source, verdict, accepted, standing,
  struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
