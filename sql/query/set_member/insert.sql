-- Writes a member of a set for the first time.
-- Parameters: every column of set_member, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO set_member (
  id, set_id, mark, ordinal, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
