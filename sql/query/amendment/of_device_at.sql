-- When a device wrote its last change up to a number.
-- Parameters: device; number, the device's running number.
-- Columns: number of that change; clock_ms, milliseconds since 1970-01-01T00:00Z. No row when it wrote none by then.
SELECT number, clock_ms FROM amendment WHERE device = ? AND number <= ? ORDER BY number DESC LIMIT 1;
