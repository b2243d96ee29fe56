-- Lets SQLite look more closely at each page it reads. No parameters.
PRAGMA cell_size_check = ON;
