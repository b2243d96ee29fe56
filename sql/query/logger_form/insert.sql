-- Writes forms of loggers for the first time.
-- Parameters: every column of logger_form, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO logger_form (
  id, name, headings, form, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
