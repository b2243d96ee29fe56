-- Columns: the mark of the program whose file this is; 0 when unmarked.
PRAGMA application_id;
