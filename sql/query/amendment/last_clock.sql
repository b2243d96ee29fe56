-- The latest time on the hybrid logical clock.
-- Columns: clock_ms, milliseconds since 1970-01-01T00:00Z; clock_tick. No row in an empty logbook.
SELECT clock_ms, clock_tick FROM amendment ORDER BY clock_ms DESC, clock_tick DESC LIMIT 1;
