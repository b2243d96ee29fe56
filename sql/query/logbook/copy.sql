-- Copies the whole logbook to a new file.
-- Parameters: the path of the copy, which must not exist.
VACUUM INTO ?;
