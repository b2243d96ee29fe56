-- Ends the time in which a connection sees the logbook as it stood. No parameters.
ROLLBACK;
