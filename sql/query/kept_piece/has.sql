-- Whether something is kept by one SHA-256.
-- Parameters: the SHA-256, 64 hexadecimal digits. Columns: 1 yes, 0 no.
SELECT EXISTS (SELECT 1 FROM kept_piece WHERE sha256 = ?);
