-- What was typed in a form about a record and not saved.
-- Parameters: form, record. Columns: fields (JSON object), kept_at_ms (since 1970-01-01T00:00Z).
SELECT fields, kept_at_ms FROM draft WHERE form = ? AND record = ?;
