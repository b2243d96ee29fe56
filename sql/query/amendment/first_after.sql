-- When something was first written after a moment.
-- Parameters: milliseconds since 1970-01-01T00:00Z. Columns: clock_ms, milliseconds since then; null when nothing was.
SELECT min(clock_ms) FROM amendment WHERE clock_ms > ?;
