-- Keeps one piece.
-- Parameters: the SHA-256 of the whole, 64 hexadecimal digits; number of the piece, from 0; its bytes.
INSERT INTO kept_piece (sha256, number, bytes) VALUES (?, ?, ?);
