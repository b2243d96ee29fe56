-- Every cause, whatever its standing, in the order first written.
-- Columns: every column of cause, in its order.
-- Units: share hundredths of a percent; made_at_ms milliseconds since 1970-01-01T00:00Z.
SELECT
  id, incident_id, statement, area, share, "by", note, predicts, standing, struck_because, made_at_ms, made_by,
  amended_by, rev, checksum
FROM cause ORDER BY rowid;
