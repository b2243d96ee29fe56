-- Limits of parts that count since the last skim, or since the last rebuild of the engine they sit in.

INSERT INTO limit_action (code) VALUES
  ('skim'),
  ('rebuild');
