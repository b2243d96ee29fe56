-- The end of a device's chain.
-- Parameters: the device. Columns: number, the device's running number; hash. No row when it wrote nothing yet.
SELECT number, hash FROM amendment WHERE device = ? ORDER BY number DESC LIMIT 1;
