-- The end of every device's chain.
-- Columns: device; number, the device's running number; hash.
SELECT device, max(number), hash FROM amendment GROUP BY device;
