-- Writes a pass of a skim for the first time.
-- Parameters: every column of skim_pass, in its order.
-- Units: depth_nm nanometres; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO skim_pass (
  id, skim_id, number, depth_nm, shadow, "where", standing, struck_because, made_at_ms, made_by, amended_by, rev,
  checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
