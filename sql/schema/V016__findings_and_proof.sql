-- Findings, causes weighed, what is done about an incident and whether it holds, lessons, trials, photos.

-- Where on an engine something is found.
CREATE TABLE finding_place (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO finding_place (code) VALUES
  ('plug'),
  ('crown'),
  ('ring land'),
  ('rings'),
  ('skirt'),
  ('piston pin'),
  ('pin boss'),
  ('circlip'),
  ('bore'),
  ('rod'),
  ('little end'),
  ('big-end housing'),
  ('rod bolt'),
  ('big-end shell'),
  ('back of a shell'),
  ('crank pin'),
  ('main shell'),
  ('main journal'),
  ('main tunnel'),
  ('thrust face'),
  ('crank'),
  ('damper'),
  ('flywheel'),
  ('block face'),
  ('head face'),
  ('chamber'),
  ('head gasket'),
  ('fire ring'),
  ('stud or bolt'),
  ('valve'),
  ('valve seat'),
  ('valve guide'),
  ('valve spring'),
  ('retainer and collets'),
  ('follower'),
  ('cam lobe'),
  ('chain or belt'),
  ('oil pump'),
  ('oil filter'),
  ('sump and pick-up'),
  ('oil cooler and lines'),
  ('water pump'),
  ('hose or clamp'),
  ('seal'),
  ('injector'),
  ('wiring'),
  ('clutch'),
  ('elsewhere');

-- What a mark is called.
CREATE TABLE finding_mark (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO finding_mark (code) VALUES
  ('as new'),
  ('even wear'),
  ('wiped'),
  ('crazed'),
  ('dirt embedded'),
  ('scored'),
  ('worn at the edges'),
  ('fretted'),
  ('spun'),
  ('heat colour'),
  ('lining torn off'),
  ('etched'),
  ('eroded'),
  ('pitted'),
  ('holed or melted'),
  ('scuffed'),
  ('seized'),
  ('polished arc'),
  ('half-moon'),
  ('cracked'),
  ('broken'),
  ('bent'),
  ('stretched'),
  ('out of round'),
  ('worn'),
  ('recessed'),
  ('burnt'),
  ('carbon track'),
  ('beaten thin'),
  ('crushed'),
  ('split'),
  ('soft'),
  ('distorted'),
  ('loose'),
  ('leaking'),
  ('chafed'),
  ('glazed'),
  ('rusty'),
  ('deposits'),
  ('specks'),
  ('flakes'),
  ('blocked'),
  ('wet'),
  ('missing'),
  ('something else');

-- How far a mark has gone.
CREATE TABLE how_marked (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO how_marked (code) VALUES
  ('as it should be'),
  ('light'),
  ('clear'),
  ('heavy'),
  ('failed');

-- How a cause stands.
CREATE TABLE cause_state (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO cause_state (code) VALUES
  ('open'),
  ('ruled out'),
  ('contributing'),
  ('main');

-- How sure somebody is.
CREATE TABLE how_sure (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO how_sure (code) VALUES
  ('guess'),
  ('likely'),
  ('seen');

-- For or against a cause.
CREATE TABLE speaks (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO speaks (code) VALUES
  ('strongly for'),
  ('for'),
  ('neither'),
  ('against'),
  ('strongly against');

-- What an action is for.
CREATE TABLE action_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO action_kind (code) VALUES
  ('containment'),
  ('corrective'),
  ('preventive');

-- What proof consists of.
CREATE TABLE proof_by (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO proof_by (code) VALUES
  ('running'),
  ('look'),
  ('reading');

-- What came of a trial.
CREATE TABLE trial_verdict (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO trial_verdict (code) VALUES
  ('better'),
  ('as good'),
  ('worse'),
  ('cannot be told');

INSERT INTO face_mark_kind (code) VALUES
  ('piston contact');

-- A piece of evidence.
CREATE TABLE finding (
  id TEXT NOT NULL PRIMARY KEY,
  incident_id TEXT REFERENCES incident (id),
  engine_id TEXT REFERENCES engine (id),
  build_id TEXT REFERENCES build (id),
  part_id TEXT REFERENCES part (id),
  member TEXT NOT NULL,
  place TEXT REFERENCES finding_place (code),
  number INTEGER,
  spot TEXT NOT NULL,
  mark TEXT REFERENCES finding_mark (code),
  how TEXT REFERENCES how_marked (code),
  face TEXT REFERENCES face_kind (code),
  x_nm INTEGER, -- nanometres from the front end
  y_nm INTEGER, -- nanometres from the inlet edge
  reading_id TEXT REFERENCES reading (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  "by" TEXT NOT NULL,
  words TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (incident_id IS NOT NULL OR engine_id IS NOT NULL OR part_id IS NOT NULL),
  CHECK (mark IS NOT NULL OR trim(words) <> ''),
  CHECK (number >= 1),
  CHECK ((x_nm IS NULL) = (y_nm IS NULL)),
  CHECK (x_nm IS NULL OR face IS NOT NULL),
  CHECK (rev >= 1)
) STRICT;

-- How a finding speaks to a cause.
CREATE TABLE weighing (
  id TEXT NOT NULL PRIMARY KEY,
  finding_id TEXT NOT NULL REFERENCES finding (id),
  cause_id TEXT NOT NULL REFERENCES cause (id),
  speaks TEXT NOT NULL REFERENCES speaks (code),
  why TEXT NOT NULL,
  "by" TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (rev >= 1)
) STRICT;

-- What was made of a cause on a day.
CREATE TABLE cause_call (
  id TEXT NOT NULL PRIMARY KEY,
  cause_id TEXT NOT NULL REFERENCES cause (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  state TEXT NOT NULL REFERENCES cause_state (code),
  sure TEXT NOT NULL REFERENCES how_sure (code),
  because TEXT NOT NULL,
  "by" TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (rev >= 1)
) STRICT;

-- What decides on a cause.
CREATE TABLE cause_test (
  id TEXT NOT NULL PRIMARY KEY,
  cause_id TEXT NOT NULL REFERENCES cause (id),
  what TEXT NOT NULL,
  who TEXT NOT NULL,
  due TEXT, -- day, 2026-07-05
  done_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  done_zone TEXT, -- name of a time zone
  done_offset_s INTEGER, -- seconds east of UTC
  found TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((done_utc_ms IS NULL) = (done_zone IS NULL) AND (done_utc_ms IS NULL) = (done_offset_s IS NULL)),
  CHECK (trim(what) <> ''),
  CHECK (done_utc_ms IS NULL OR trim(found) <> ''),
  CHECK (rev >= 1)
) STRICT;

-- What is done about an incident.
CREATE TABLE case_action (
  id TEXT NOT NULL PRIMARY KEY,
  incident_id TEXT NOT NULL REFERENCES incident (id),
  cause_id TEXT REFERENCES cause (id),
  kind TEXT NOT NULL REFERENCES action_kind (code),
  what TEXT NOT NULL,
  who TEXT NOT NULL,
  due TEXT, -- day, 2026-07-05
  done_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  done_zone TEXT, -- name of a time zone
  done_offset_s INTEGER, -- seconds east of UTC
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((done_utc_ms IS NULL) = (done_zone IS NULL) AND (done_utc_ms IS NULL) = (done_offset_s IS NULL)),
  CHECK (trim(what) <> ''),
  CHECK (rev >= 1)
) STRICT;

-- What carries what an action changed.
CREATE TABLE action_carried (
  id TEXT NOT NULL PRIMARY KEY,
  action_id TEXT NOT NULL REFERENCES case_action (id),
  engine_id TEXT NOT NULL REFERENCES engine (id),
  part_id TEXT REFERENCES part (id),
  from_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  from_zone TEXT NOT NULL, -- name of a time zone
  from_offset_s INTEGER NOT NULL, -- seconds east of UTC
  "by" TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (rev >= 1)
) STRICT;

-- What is asked for before a fix is taken as proven.
CREATE TABLE proof_wanted (
  id TEXT NOT NULL PRIMARY KEY,
  incident_id TEXT NOT NULL REFERENCES incident (id),
  action_id TEXT REFERENCES case_action (id),
  kind TEXT NOT NULL REFERENCES proof_by (code),
  what TEXT NOT NULL,
  after_ms INTEGER, -- milliseconds
  times INTEGER NOT NULL,
  reading TEXT REFERENCES reading_kind (code),
  set_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  set_zone TEXT NOT NULL, -- name of a time zone
  set_offset_s INTEGER NOT NULL, -- seconds east of UTC
  "by" TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (times >= 1),
  CHECK ((reading IS NOT NULL) = (kind = 'reading')),
  CHECK (kind = 'running' OR trim(what) <> ''),
  CHECK (kind <> 'running' OR after_ms >= 1),
  CHECK (rev >= 1)
) STRICT;

-- A proof that was made.
CREATE TABLE proof_seen (
  id TEXT NOT NULL PRIMARY KEY,
  wanted_id TEXT NOT NULL REFERENCES proof_wanted (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  engine_id TEXT REFERENCES engine (id),
  part_id TEXT REFERENCES part (id),
  met INTEGER NOT NULL,
  reading_id TEXT REFERENCES reading (id),
  finding_id TEXT REFERENCES finding (id),
  words TEXT NOT NULL,
  "by" TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (met IN (0, 1)),
  CHECK (trim(words) <> '' OR reading_id IS NOT NULL OR finding_id IS NOT NULL),
  CHECK (rev >= 1)
) STRICT;

-- Two incidents that belong together.
CREATE TABLE incident_link (
  id TEXT NOT NULL PRIMARY KEY,
  incident_id TEXT NOT NULL REFERENCES incident (id),
  other_id TEXT NOT NULL REFERENCES incident (id),
  why TEXT NOT NULL,
  "by" TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (incident_id <> other_id),
  CHECK (trim(why) <> ''),
  CHECK (rev >= 1)
) STRICT;

-- What an incident taught.
CREATE TABLE lesson (
  id TEXT NOT NULL PRIMARY KEY,
  incident_id TEXT REFERENCES incident (id),
  what TEXT NOT NULL,
  question TEXT NOT NULL,
  kind TEXT REFERENCES measure_kind (code),
  at_least INTEGER, -- whole parts of the dimension of its kind
  at_most INTEGER, -- whole parts of the dimension of its kind
  design_id TEXT REFERENCES engine_design (id),
  part_kind TEXT REFERENCES part_kind (code),
  from_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  from_zone TEXT NOT NULL, -- name of a time zone
  from_offset_s INTEGER NOT NULL, -- seconds east of UTC
  "by" TEXT NOT NULL,
  withdrawn_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  withdrawn_zone TEXT, -- name of a time zone
  withdrawn_offset_s INTEGER, -- seconds east of UTC
  withdrawn_by TEXT NOT NULL,
  withdrawn_because TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((withdrawn_utc_ms IS NULL) = (withdrawn_zone IS NULL) AND (withdrawn_utc_ms IS NULL) = (withdrawn_offset_s IS NULL)),
  CHECK (trim(what) <> ''),
  CHECK ((kind IS NULL) = (trim(question) <> '')),
  CHECK (kind IS NOT NULL OR at_least IS NULL AND at_most IS NULL),
  CHECK (at_least <= at_most),
  CHECK (withdrawn_utc_ms IS NULL OR trim(withdrawn_because) <> ''),
  CHECK (withdrawn_utc_ms >= from_utc_ms),
  CHECK (rev >= 1)
) STRICT;

-- What the sheet of a build says to a lesson.
CREATE TABLE lesson_answer (
  id TEXT NOT NULL PRIMARY KEY,
  lesson_id TEXT NOT NULL REFERENCES lesson (id),
  build_id TEXT NOT NULL REFERENCES build (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  met INTEGER NOT NULL,
  concession_id TEXT REFERENCES concession (id),
  words TEXT NOT NULL,
  "by" TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (met IN (0, 1)),
  CHECK (met = 0 OR concession_id IS NULL),
  CHECK (rev >= 1)
) STRICT;

-- A part design tried against the usual one.
CREATE TABLE trial (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  tried_id TEXT NOT NULL REFERENCES part_design (id),
  usual_id TEXT REFERENCES part_design (id),
  hoped TEXT NOT NULL,
  "from" TEXT NOT NULL, -- day, 2026-07-05
  "by" TEXT NOT NULL,
  ended TEXT, -- day, 2026-07-05
  verdict TEXT REFERENCES trial_verdict (code),
  because TEXT NOT NULL,
  judged_by TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (trim(name) <> ''),
  CHECK (tried_id <> usual_id),
  CHECK ((ended IS NULL) = (verdict IS NULL)),
  CHECK (ended >= "from"),
  CHECK (verdict IS NULL OR trim(because) <> ''),
  CHECK (rev >= 1)
) STRICT;

-- A picture somebody took; its bytes are elsewhere.
CREATE TABLE photo (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  content TEXT NOT NULL,
  size INTEGER NOT NULL, -- bytes
  media TEXT NOT NULL,
  width INTEGER,
  height INTEGER,
  taken_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  taken_zone TEXT, -- name of a time zone
  taken_offset_s INTEGER, -- seconds east of UTC
  incident_id TEXT REFERENCES incident (id),
  finding_id TEXT REFERENCES finding (id),
  engine_id TEXT REFERENCES engine (id),
  part_id TEXT REFERENCES part (id),
  reading_id TEXT REFERENCES reading (id),
  number INTEGER,
  caption TEXT NOT NULL,
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  "by" TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((taken_utc_ms IS NULL) = (taken_zone IS NULL) AND (taken_utc_ms IS NULL) = (taken_offset_s IS NULL)),
  CHECK (length(content) = 64),
  CHECK (size >= 1),
  CHECK (width >= 1),
  CHECK (height >= 1),
  CHECK ((width IS NULL) = (height IS NULL)),
  CHECK (number >= 1),
  CHECK (rev >= 1)
) STRICT;

-- What a cause would have to show.
ALTER TABLE cause ADD COLUMN predicts TEXT;

CREATE TRIGGER finding_no_delete BEFORE DELETE ON finding BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER finding_no_replace BEFORE INSERT ON finding
WHEN EXISTS (SELECT 1 FROM finding WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM finding WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER finding_amended BEFORE UPDATE ON finding
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM finding WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER weighing_no_delete BEFORE DELETE ON weighing BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER weighing_no_replace BEFORE INSERT ON weighing
WHEN EXISTS (SELECT 1 FROM weighing WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM weighing WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER weighing_amended BEFORE UPDATE ON weighing
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM weighing WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER cause_call_no_delete BEFORE DELETE ON cause_call BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER cause_call_no_replace BEFORE INSERT ON cause_call
WHEN EXISTS (SELECT 1 FROM cause_call WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM cause_call WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER cause_call_amended BEFORE UPDATE ON cause_call
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM cause_call WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER cause_test_no_delete BEFORE DELETE ON cause_test BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER cause_test_no_replace BEFORE INSERT ON cause_test
WHEN EXISTS (SELECT 1 FROM cause_test WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM cause_test WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER cause_test_amended BEFORE UPDATE ON cause_test
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM cause_test WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER case_action_no_delete BEFORE DELETE ON case_action BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER case_action_no_replace BEFORE INSERT ON case_action
WHEN EXISTS (SELECT 1 FROM case_action WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM case_action WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER case_action_amended BEFORE UPDATE ON case_action
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM case_action WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER action_carried_no_delete BEFORE DELETE ON action_carried BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER action_carried_no_replace BEFORE INSERT ON action_carried
WHEN EXISTS (SELECT 1 FROM action_carried WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM action_carried WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER action_carried_amended BEFORE UPDATE ON action_carried
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM action_carried WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER proof_wanted_no_delete BEFORE DELETE ON proof_wanted BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER proof_wanted_no_replace BEFORE INSERT ON proof_wanted
WHEN EXISTS (SELECT 1 FROM proof_wanted WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM proof_wanted WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER proof_wanted_amended BEFORE UPDATE ON proof_wanted
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM proof_wanted WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER proof_seen_no_delete BEFORE DELETE ON proof_seen BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER proof_seen_no_replace BEFORE INSERT ON proof_seen
WHEN EXISTS (SELECT 1 FROM proof_seen WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM proof_seen WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER proof_seen_amended BEFORE UPDATE ON proof_seen
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM proof_seen WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER incident_link_no_delete BEFORE DELETE ON incident_link BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER incident_link_no_replace BEFORE INSERT ON incident_link
WHEN EXISTS (SELECT 1 FROM incident_link WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM incident_link WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER incident_link_amended BEFORE UPDATE ON incident_link
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM incident_link WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER lesson_no_delete BEFORE DELETE ON lesson BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER lesson_no_replace BEFORE INSERT ON lesson
WHEN EXISTS (SELECT 1 FROM lesson WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM lesson WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER lesson_amended BEFORE UPDATE ON lesson
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM lesson WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER lesson_answer_no_delete BEFORE DELETE ON lesson_answer BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER lesson_answer_no_replace BEFORE INSERT ON lesson_answer
WHEN EXISTS (SELECT 1 FROM lesson_answer WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM lesson_answer WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER lesson_answer_amended BEFORE UPDATE ON lesson_answer
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM lesson_answer WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER trial_no_delete BEFORE DELETE ON trial BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER trial_no_replace BEFORE INSERT ON trial
WHEN EXISTS (SELECT 1 FROM trial WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM trial WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER trial_amended BEFORE UPDATE ON trial
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM trial WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER photo_no_delete BEFORE DELETE ON photo BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER photo_no_replace BEFORE INSERT ON photo
WHEN EXISTS (SELECT 1 FROM photo WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM photo WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER photo_amended BEFORE UPDATE ON photo
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM photo WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;
