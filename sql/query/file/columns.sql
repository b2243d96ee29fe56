-- The columns of a table in the order in which its rows hold them. Parameters: the table. Columns: name.
SELECT name FROM pragma_table_info(?) ORDER BY cid;
