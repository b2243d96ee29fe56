-- Every row of proofs wanted, whatever its standing, in the order first written.
-- Columns: every column of proof_wanted, in its order.
-- Units: after_ms milliseconds; set_utc_ms milliseconds since 1970-01-01T00:00Z; set_zone name of a time zone;
-- set_offset_s seconds east of UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, incident_id, action_id, kind, what, after_ms, times, reading, set_utc_ms, set_zone, set_offset_s, "by",
  standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM proof_wanted ORDER BY rowid;
