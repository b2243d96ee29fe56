-- Every row of proofs seen, whatever its standing, in the order first written.
-- Columns: every column of proof_seen, in its order.
-- Units: at_utc_ms milliseconds since 1970-01-01T00:00Z; at_zone name of a time zone; at_offset_s seconds east of
-- UTC; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, wanted_id, at_utc_ms, at_zone, at_offset_s, engine_id, part_id, met, reading_id, finding_id, words, "by",
  standing, struck_because, made_at_ms, made_by, amended_by, rev, checksum
FROM proof_seen ORDER BY rowid;
