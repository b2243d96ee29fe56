-- Whose logbook it is. Reads files of every form there was.
-- Columns: name; no row while no team is written down.
SELECT name FROM team WHERE standing = 'in force';
