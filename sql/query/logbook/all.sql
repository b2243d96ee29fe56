-- Which logbook this is.
-- Columns: id, made_at_ms (milliseconds since 1970-01-01T00:00Z).
SELECT id, made_at_ms FROM logbook;
