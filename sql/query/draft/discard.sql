-- Lets go of a draft.
-- Parameters: form, record.
DELETE FROM draft WHERE form = ? AND record = ?;
