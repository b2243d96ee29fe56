-- The pieces of what is kept by one SHA-256, in order.
-- Parameters: the SHA-256, 64 hexadecimal digits. Columns: bytes.
SELECT bytes FROM kept_piece WHERE sha256 = ? ORDER BY number;
