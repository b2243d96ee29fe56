-- What readings may be, what holds an engine or its parts, and who went on past a limit.

INSERT INTO counter (code) VALUES
  ('months'),
  ('uses');

INSERT INTO limit_action (code) VALUES
  ('crack test');

-- What a reading reads.
CREATE TABLE reading_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO reading_kind (code) VALUES
  ('leak-down'),
  ('compression'),
  ('spring force'),
  ('lash'),
  ('hardness'),
  ('oil pressure'),
  ('oil metal'),
  ('filter'),
  ('plug'),
  ('borescope');

-- How something looked.
CREATE TABLE grade (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO grade (code) VALUES
  ('clean'),
  ('run-in grey'),
  ('few specks'),
  ('flakes'),
  ('bearing colour'),
  ('light marks'),
  ('damaged');

-- Whether the engine was hot or cold when something was read.
CREATE TABLE warmth (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO warmth (code) VALUES
  ('cold'),
  ('hot'),
  ('not said');

-- What asks for work whatever the hours.
CREATE TABLE trigger_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO trigger_kind (code) VALUES
  ('speed above'),
  ('water above'),
  ('oil above'),
  ('oil pressure below'),
  ('graded'),
  ('worse twice');

-- What a reading may be, and how old it may get.
CREATE TABLE reading_limit (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  kind TEXT NOT NULL REFERENCES reading_kind (code),
  design_id TEXT REFERENCES engine_design (id),
  part_kind TEXT REFERENCES part_kind (code),
  engine_id TEXT REFERENCES engine (id),
  at_least INTEGER, -- in the unit of the kind of reading
  at_most INTEGER, -- in the unit of the kind of reading
  change_at_most INTEGER, -- in the unit of the kind of reading
  fall_at_most INTEGER, -- hundredths of a percent of the baseline
  worst_grade TEXT REFERENCES grade (code),
  every_ms INTEGER, -- milliseconds
  rank TEXT NOT NULL REFERENCES limit_rank (code),
  source TEXT NOT NULL,
  valid_from TEXT NOT NULL, -- day, 2026-07-05
  valid_to TEXT, -- day, 2026-07-05
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (at_least <= at_most),
  CHECK (change_at_most >= 0),
  CHECK (fall_at_most BETWEEN 0 AND 10000),
  CHECK (every_ms > 0),
  CHECK (at_least IS NOT NULL OR at_most IS NOT NULL OR change_at_most IS NOT NULL OR fall_at_most IS NOT NULL OR worst_grade IS NOT NULL OR every_ms IS NOT NULL),
  CHECK (rev >= 1)
) STRICT;

-- A rule that holds an engine or its parts, whatever their hours.
CREATE TABLE "trigger" (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  kind TEXT NOT NULL REFERENCES trigger_kind (code),
  design_id TEXT REFERENCES engine_design (id),
  figure INTEGER, -- in the unit of the kind of trigger
  lasting_ms INTEGER, -- milliseconds
  reading_kind TEXT REFERENCES reading_kind (code),
  grade TEXT REFERENCES grade (code),
  holds TEXT NOT NULL, -- words joined by semicolons
  asks TEXT NOT NULL,
  rank TEXT NOT NULL REFERENCES limit_rank (code),
  source TEXT NOT NULL,
  valid_from TEXT NOT NULL, -- day, 2026-07-05
  valid_to TEXT, -- day, 2026-07-05
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (figure > 0),
  CHECK (lasting_ms >= 0),
  CHECK (rev >= 1)
) STRICT;

-- One figure or grade read on an engine or a part.
CREATE TABLE reading (
  id TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL REFERENCES reading_kind (code),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  engine_id TEXT REFERENCES engine (id),
  part_id TEXT REFERENCES part (id),
  place TEXT NOT NULL,
  value INTEGER, -- in the unit of the kind of reading
  grade TEXT REFERENCES grade (code),
  heard_at TEXT NOT NULL,
  warmth TEXT NOT NULL REFERENCES warmth (code),
  baseline INTEGER NOT NULL, -- 1 yes, 0 no
  "by" TEXT NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (baseline IN (0, 1)),
  CHECK (engine_id IS NOT NULL OR part_id IS NOT NULL),
  CHECK ((value IS NULL) <> (grade IS NULL)),
  CHECK (value >= 0),
  CHECK (rev >= 1)
) STRICT;

-- One excursion over the speed that asks for an inspection.
CREATE TABLE over_rev (
  id TEXT NOT NULL PRIMARY KEY,
  run_id TEXT NOT NULL REFERENCES run (id),
  peak_rpm INTEGER NOT NULL, -- revolutions per minute
  lasted_ms INTEGER, -- milliseconds
  gear TEXT NOT NULL,
  "from" TEXT REFERENCES speed_source (code),
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (peak_rpm >= 0),
  CHECK (lasted_ms >= 0),
  CHECK (rev >= 1)
) STRICT;

-- An engine or a part held by a person.
CREATE TABLE hold (
  id TEXT NOT NULL PRIMARY KEY,
  engine_id TEXT REFERENCES engine (id),
  part_id TEXT REFERENCES part (id),
  member TEXT NOT NULL,
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  why TEXT NOT NULL,
  asks TEXT NOT NULL,
  "by" TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((engine_id IS NULL) <> (part_id IS NULL)),
  CHECK (rev >= 1)
) STRICT;

-- A signed answer to a hold, or to what a trigger holds.
CREATE TABLE clearance (
  id TEXT NOT NULL PRIMARY KEY,
  hold_id TEXT REFERENCES hold (id),
  run_id TEXT REFERENCES run (id),
  reading_id TEXT REFERENCES reading (id),
  trigger_id TEXT REFERENCES "trigger" (id),
  part_id TEXT REFERENCES part (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  done TEXT NOT NULL,
  result TEXT NOT NULL,
  "by" TEXT NOT NULL,
  words TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((hold_id IS NULL) + (run_id IS NULL) + (reading_id IS NULL) = 2),
  CHECK ((hold_id IS NULL) <> (trigger_id IS NULL)),
  CHECK (rev >= 1)
) STRICT;

-- A signed decision to go past a limit that may be passed.
CREATE TABLE run_on (
  id TEXT NOT NULL PRIMARY KEY,
  limit_id TEXT REFERENCES "limit" (id),
  reading_limit_id TEXT REFERENCES reading_limit (id),
  part_id TEXT REFERENCES part (id),
  engine_id TEXT REFERENCES engine (id),
  car_id TEXT REFERENCES car (id),
  up_to INTEGER NOT NULL, -- in the unit of the limit's counter; past a limit of readings milliseconds of running
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  "by" TEXT NOT NULL,
  adviser TEXT NOT NULL,
  advice TEXT NOT NULL,
  why TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((limit_id IS NULL) <> (reading_limit_id IS NULL)),
  CHECK ((part_id IS NULL) + (engine_id IS NULL) + (car_id IS NULL) = 2),
  CHECK (up_to > 0),
  CHECK (rev >= 1)
) STRICT;

CREATE INDEX reading_engine ON reading (engine_id, at_utc_ms) WHERE standing = 'in force';
CREATE INDEX reading_part ON reading (part_id, at_utc_ms) WHERE standing = 'in force';

-- Guards of the history, as for every other record.

CREATE TRIGGER reading_limit_no_delete BEFORE DELETE ON reading_limit BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER reading_limit_no_replace BEFORE INSERT ON reading_limit
WHEN EXISTS (SELECT 1 FROM reading_limit WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM reading_limit WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER reading_limit_amended BEFORE UPDATE ON reading_limit
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM reading_limit WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER trigger_no_delete BEFORE DELETE ON "trigger" BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER trigger_no_replace BEFORE INSERT ON "trigger"
WHEN EXISTS (SELECT 1 FROM "trigger" WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM "trigger" WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER trigger_amended BEFORE UPDATE ON "trigger"
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM "trigger" WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER reading_no_delete BEFORE DELETE ON reading BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER reading_no_replace BEFORE INSERT ON reading
WHEN EXISTS (SELECT 1 FROM reading WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM reading WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER reading_amended BEFORE UPDATE ON reading
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM reading WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER over_rev_no_delete BEFORE DELETE ON over_rev BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER over_rev_no_replace BEFORE INSERT ON over_rev
WHEN EXISTS (SELECT 1 FROM over_rev WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM over_rev WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER over_rev_amended BEFORE UPDATE ON over_rev
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM over_rev WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER hold_no_delete BEFORE DELETE ON hold BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER hold_no_replace BEFORE INSERT ON hold
WHEN EXISTS (SELECT 1 FROM hold WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM hold WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER hold_amended BEFORE UPDATE ON hold
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM hold WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER clearance_no_delete BEFORE DELETE ON clearance BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER clearance_no_replace BEFORE INSERT ON clearance
WHEN EXISTS (SELECT 1 FROM clearance WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM clearance WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER clearance_amended BEFORE UPDATE ON clearance
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM clearance WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER run_on_no_delete BEFORE DELETE ON run_on BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER run_on_no_replace BEFORE INSERT ON run_on
WHEN EXISTS (SELECT 1 FROM run_on WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM run_on WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER run_on_amended BEFORE UPDATE ON run_on
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM run_on WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;
