-- Writes a position for the first time.
-- Parameters: every column of position, in its order.
-- Units: needed 1 yes, 0 no; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO position (
  id, design_id, car_id, kind, name, ordinal, needed, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
