-- Says which logbook this is; once, when it is made.
-- Parameters: id, made_at_ms (milliseconds since 1970-01-01T00:00Z).
INSERT INTO logbook (only_row, id, made_at_ms) VALUES (1, ?, ?);
