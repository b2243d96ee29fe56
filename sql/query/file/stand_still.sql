-- Begins a time in which a connection sees the logbook as it stands at its first reading, whatever others write.
-- No parameters.
BEGIN DEFERRED;
