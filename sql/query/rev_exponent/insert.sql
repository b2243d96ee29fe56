-- Writes exponents of speed for the first time.
-- Parameters: every column of rev_exponent, in its order.
-- Units: reference_rpm revolutions a minute; hundredths hundredths; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO rev_exponent (
  id, design_id, part_kind, reference_rpm, hundredths, source, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
