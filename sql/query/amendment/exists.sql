-- Whether an amendment is in the history as it is.
-- Parameters: device; number, the device's running number; hash. Columns: 1 when it is, 0 when it is not.
SELECT EXISTS (SELECT 1 FROM amendment WHERE device = ? AND number = ? AND hash = ?);
