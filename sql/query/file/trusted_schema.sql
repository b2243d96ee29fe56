-- Lets nothing in the schema call functions that reach outside. No parameters.
PRAGMA trusted_schema = OFF;
