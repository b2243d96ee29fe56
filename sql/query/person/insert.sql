-- Writes a person for the first time.
-- Parameters: every column of person, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO person (
  id, name, role, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
