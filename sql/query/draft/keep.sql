-- Keeps what was typed, in place of an earlier draft of the same form and record.
-- Parameters: form, record, fields (JSON object, field name to text), kept_at_ms (since 1970-01-01T00:00Z).
INSERT INTO draft (form, record, fields, kept_at_ms) VALUES (?, ?, ?, ?)
ON CONFLICT (form, record) DO UPDATE SET fields = excluded.fields, kept_at_ms = excluded.kept_at_ms;
