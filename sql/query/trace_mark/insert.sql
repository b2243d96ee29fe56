-- Writes marks of traces for the first time.
-- Parameters: every column of trace_mark, in its order.
-- Units: at_ms milliseconds after the first sample; lasted_ms milliseconds; thousandths thousandths of the channel's
-- unit; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO trace_mark (
  id, trace_id, kind, at_ms, lasted_ms, channel, thousandths, words, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
