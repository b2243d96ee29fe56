-- Everything typed and not saved, the latest first.
-- Columns: form, record, kept_at_ms (since 1970-01-01T00:00Z).
SELECT form, record, kept_at_ms FROM draft ORDER BY kept_at_ms DESC, form, record;
