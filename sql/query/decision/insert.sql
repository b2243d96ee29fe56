-- Writes a decision for the first time.
-- Parameters: every column of decision, in its order.
-- Units: asked_utc_ms milliseconds since 1970-01-01T00:00Z; decided_utc_ms milliseconds since 1970-01-01T00:00Z;
-- _offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO decision (
  id, mark, question, asked_utc_ms, asked_zone, asked_offset_s, engine_id, car_id, event_id, answers_id,
  adviser, advice, decided_utc_ms, decided_zone, decided_offset_s, decided_by, dissent, outcome, verdict,
  led_to_id, note, standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
