-- Where on its part a finding is, and what was looked at without a mark being found.

-- A look that found nothing is evidence too.
INSERT INTO finding_mark (code) VALUES ('no mark');

-- How far round the part, in degrees, and how far out or along it, in hundredths of it.
ALTER TABLE finding ADD COLUMN around_degrees INTEGER CHECK (around_degrees BETWEEN 0 AND 359);
ALTER TABLE finding ADD COLUMN out_percent INTEGER
  CHECK (out_percent BETWEEN 0 AND 100)
  CHECK ((around_degrees IS NULL) = (out_percent IS NULL))
  CHECK (around_degrees IS NULL OR place IS NOT NULL);
