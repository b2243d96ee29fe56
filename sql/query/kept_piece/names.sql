-- By which SHA-256 anything is kept.
-- Parameters: none. Columns: SHA-256, 64 hexadecimal digits.
SELECT DISTINCT sha256 FROM kept_piece ORDER BY sha256;
