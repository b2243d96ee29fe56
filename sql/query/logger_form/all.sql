-- Every row of forms of loggers, whatever its standing, in the order first written.
-- Columns: every column of logger_form, in its order.
-- Units: made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, name, headings, form, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM logger_form ORDER BY rowid;
