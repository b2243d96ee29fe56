-- Writes trials for the first time.
-- Parameters: every column of trial, in its order.
-- Units: "from" day, 2026-07-05; ended day, 2026-07-05; made_at_ms milliseconds since 1970-01-01T00:00Z.
INSERT INTO trial (
  id, name, tried_id, usual_id, hoped, "from", "by", ended, verdict, because, judged_by, standing, struck_because,
  made_at_ms, made_by, amended_by, rev, checksum
) VALUES (
  ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?
);
