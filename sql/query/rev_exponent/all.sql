-- Every row of exponents of speed, whatever its standing, in the order first written.
-- Columns: every column of rev_exponent, in its order.
-- Units: reference_rpm revolutions a minute; hundredths hundredths; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, design_id, part_kind, reference_rpm, hundredths, source, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
FROM rev_exponent ORDER BY rowid;
