-- Whether anything of a change is in the logbook.
-- Parameters: the change's id. Columns: 1 when it is, 0 when it is not.
SELECT EXISTS (SELECT 1 FROM amendment WHERE change_id = ?);
