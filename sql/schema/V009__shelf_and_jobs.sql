-- Where parts are when they are in no engine, work that is planned, what is with others, tools and what they tightened.

INSERT INTO counter (code) VALUES
  ('torque cycles');

-- Why items came to the shelf or left it.
CREATE TABLE stock_move_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO stock_move_kind (code) VALUES
  ('bought'),
  ('counted'),
  ('used'),
  ('put back'),
  ('spoilt');

-- How a build came to be proven.
CREATE TABLE proof_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO proof_kind (code) VALUES
  ('measured'),
  ('by hand');

-- What a tool is.
CREATE TABLE tool_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO tool_kind (code) VALUES
  ('torque wrench'),
  ('angle gauge'),
  ('stretch gauge'),
  ('micrometer'),
  ('bore gauge'),
  ('dial gauge'),
  ('depth gauge'),
  ('feeler gauge'),
  ('straightedge'),
  ('leak-down tester'),
  ('compression tester'),
  ('spring tester'),
  ('pressure gauge'),
  ('other');

-- How a group of fasteners is brought to its load.
CREATE TABLE joint_method (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO joint_method (code) VALUES
  ('torque'),
  ('angle'),
  ('torque and angle'),
  ('stretch');

-- A wrench or a gauge.
CREATE TABLE tool (
  id TEXT NOT NULL PRIMARY KEY,
  mark TEXT NOT NULL,
  kind TEXT NOT NULL REFERENCES tool_kind (code),
  note TEXT NOT NULL,
  out_of_use TEXT, -- day, 2026-07-05
  why TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (rev >= 1)
) STRICT;

-- A tool held against a standard.
CREATE TABLE calibration (
  id TEXT NOT NULL PRIMARY KEY,
  tool_id TEXT NOT NULL REFERENCES tool (id),
  day TEXT NOT NULL, -- day, 2026-07-05
  "by" TEXT NOT NULL,
  as_found INTEGER, -- hundredths of a percent, reading less true value
  due TEXT, -- day, 2026-07-05
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (due >= day),
  CHECK (rev >= 1)
) STRICT;

-- Items without a serial that were made or bought together.
CREATE TABLE stock_batch (
  id TEXT NOT NULL PRIMARY KEY,
  design_id TEXT NOT NULL REFERENCES part_design (id),
  batch TEXT NOT NULL,
  supplier TEXT NOT NULL,
  use_by TEXT, -- day, 2026-07-05
  shelf TEXT NOT NULL,
  least_to_keep INTEGER NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (least_to_keep >= 0),
  CHECK (rev >= 1)
) STRICT;

-- Work planned.
CREATE TABLE job (
  id TEXT NOT NULL PRIMARY KEY,
  what TEXT NOT NULL, -- Work planned.
  engine_id TEXT REFERENCES engine (id),
  part_id TEXT REFERENCES part (id),
  car_id TEXT REFERENCES car (id),
  before_id TEXT REFERENCES event (id),
  who TEXT NOT NULL,
  minutes_expected INTEGER, -- minutes of work
  minutes_spent INTEGER, -- minutes of work
  waiting_for TEXT NOT NULL,
  run_id TEXT REFERENCES run (id),
  asked_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  asked_zone TEXT NOT NULL, -- name of a time zone
  asked_offset_s INTEGER NOT NULL, -- seconds east of UTC
  "by" TEXT NOT NULL,
  done_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  done_zone TEXT, -- name of a time zone
  done_offset_s INTEGER, -- seconds east of UTC
  result TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((done_utc_ms IS NULL) = (done_zone IS NULL) AND (done_utc_ms IS NULL) = (done_offset_s IS NULL)),
  CHECK (minutes_expected >= 0),
  CHECK (minutes_spent >= 0),
  CHECK (rev >= 1)
) STRICT;

-- Something kept on the shelf for a job.
CREATE TABLE job_part (
  id TEXT NOT NULL PRIMARY KEY,
  job_id TEXT NOT NULL REFERENCES job (id),
  part_id TEXT REFERENCES part (id),
  stock_id TEXT REFERENCES stock_batch (id),
  count INTEGER NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((part_id IS NULL) <> (stock_id IS NULL)),
  CHECK (count >= 1),
  CHECK (rev >= 1)
) STRICT;

-- Items put on the shelf or taken from it.
CREATE TABLE stock_move (
  id TEXT NOT NULL PRIMARY KEY,
  stock_id TEXT NOT NULL REFERENCES stock_batch (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  change INTEGER NOT NULL, -- count, below nothing when they went
  kind TEXT NOT NULL REFERENCES stock_move_kind (code),
  part_id TEXT REFERENCES part (id),
  job_id TEXT REFERENCES job (id),
  "by" TEXT NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (change <> 0),
  CHECK (rev >= 1)
) STRICT;

-- What the parts list names for a position.
CREATE TABLE listed_part (
  id TEXT NOT NULL PRIMARY KEY,
  position_id TEXT NOT NULL REFERENCES position (id),
  engine_id TEXT REFERENCES engine (id),
  design_id TEXT NOT NULL REFERENCES part_design (id),
  valid_from TEXT NOT NULL, -- day, 2026-07-05
  valid_to TEXT, -- day, 2026-07-05
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (valid_to >= valid_from),
  CHECK (rev >= 1)
) STRICT;

-- A part put aside until somebody decides.
CREATE TABLE quarantine (
  id TEXT NOT NULL PRIMARY KEY,
  part_id TEXT NOT NULL REFERENCES part (id),
  member TEXT NOT NULL,
  from_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  from_zone TEXT NOT NULL, -- name of a time zone
  from_offset_s INTEGER NOT NULL, -- seconds east of UTC
  why TEXT NOT NULL,
  "by" TEXT NOT NULL,
  to_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  to_zone TEXT, -- name of a time zone
  to_offset_s INTEGER, -- seconds east of UTC
  released TEXT NOT NULL,
  released_by TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((to_utc_ms IS NULL) = (to_zone IS NULL) AND (to_utc_ms IS NULL) = (to_offset_s IS NULL)),
  CHECK (from_utc_ms < to_utc_ms),
  CHECK (rev >= 1)
) STRICT;

-- A part taken out of use for good.
CREATE TABLE scrapping (
  id TEXT NOT NULL PRIMARY KEY,
  part_id TEXT NOT NULL REFERENCES part (id),
  member TEXT NOT NULL,
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
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

-- A part or an engine away for work, or new parts on order.
CREATE TABLE sent_out (
  id TEXT NOT NULL PRIMARY KEY,
  part_id TEXT REFERENCES part (id),
  engine_id TEXT REFERENCES engine (id),
  design_id TEXT REFERENCES part_design (id),
  count INTEGER,
  sent_to TEXT NOT NULL,
  asked TEXT NOT NULL,
  target TEXT NOT NULL,
  from_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  from_zone TEXT NOT NULL, -- name of a time zone
  from_offset_s INTEGER NOT NULL, -- seconds east of UTC
  promised TEXT, -- day, 2026-07-05
  back_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  back_zone TEXT, -- name of a time zone
  back_offset_s INTEGER, -- seconds east of UTC
  result TEXT NOT NULL,
  "by" TEXT NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((back_utc_ms IS NULL) = (back_zone IS NULL) AND (back_utc_ms IS NULL) = (back_offset_s IS NULL)),
  CHECK ((part_id IS NULL) + (engine_id IS NULL) + (design_id IS NULL) = 2),
  CHECK ((design_id IS NULL) = (count IS NULL)),
  CHECK (count >= 1),
  CHECK (from_utc_ms < back_utc_ms),
  CHECK (rev >= 1)
) STRICT;

-- A call about something that is out with others.
CREATE TABLE chase (
  id TEXT NOT NULL PRIMARY KEY,
  sent_out_id TEXT NOT NULL REFERENCES sent_out (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  answer TEXT NOT NULL,
  promised TEXT, -- day, 2026-07-05
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

-- Something outside its limit or specification, signed as accepted as it is.
CREATE TABLE concession (
  id TEXT NOT NULL PRIMARY KEY,
  engine_id TEXT REFERENCES engine (id),
  car_id TEXT REFERENCES car (id),
  build_id TEXT REFERENCES build (id),
  part_id TEXT REFERENCES part (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  what TEXT NOT NULL, -- Something outside its limit or specification, signed as accepted as it is.
  why TEXT NOT NULL,
  "by" TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (engine_id IS NOT NULL OR car_id IS NOT NULL OR part_id IS NOT NULL),
  CHECK (rev >= 1)
) STRICT;

-- What a build in the paddock says beyond its zones.
CREATE TABLE track_repair (
  id TEXT NOT NULL PRIMARY KEY,
  build_id TEXT NOT NULL REFERENCES build (id),
  went_back TEXT NOT NULL,
  tool_id TEXT REFERENCES tool (id),
  second TEXT NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (rev >= 1)
) STRICT;

-- A build that was unproven and no longer is.
CREATE TABLE build_proof (
  id TEXT NOT NULL PRIMARY KEY,
  build_id TEXT NOT NULL REFERENCES build (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  how TEXT NOT NULL REFERENCES proof_kind (code),
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

-- A seal on an engine.
CREATE TABLE seal (
  id TEXT NOT NULL PRIMARY KEY,
  engine_id TEXT NOT NULL REFERENCES engine (id),
  number TEXT NOT NULL,
  owner TEXT NOT NULL,
  from_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  from_zone TEXT NOT NULL, -- name of a time zone
  from_offset_s INTEGER NOT NULL, -- seconds east of UTC
  broken_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  broken_zone TEXT, -- name of a time zone
  broken_offset_s INTEGER, -- seconds east of UTC
  why TEXT NOT NULL,
  "by" TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((broken_utc_ms IS NULL) = (broken_zone IS NULL) AND (broken_utc_ms IS NULL) = (broken_offset_s IS NULL)),
  CHECK (from_utc_ms < broken_utc_ms),
  CHECK (rev >= 1)
) STRICT;

-- One group of fasteners tightened, by one stage.
CREATE TABLE joint (
  id TEXT NOT NULL PRIMARY KEY,
  engine_id TEXT NOT NULL REFERENCES engine (id),
  build_id TEXT REFERENCES build (id),
  fasteners TEXT NOT NULL REFERENCES part_kind (code),
  which TEXT NOT NULL,
  stage TEXT NOT NULL,
  method TEXT NOT NULL REFERENCES joint_method (code),
  value TEXT NOT NULL,
  lubricant TEXT NOT NULL,
  tool_id TEXT REFERENCES tool (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  cycle INTEGER NOT NULL, -- 1 yes, 0 no
  "by" TEXT NOT NULL,
  second TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (cycle IN (0, 1)),
  CHECK (rev >= 1)
) STRICT;

-- Something a person looked at before a run.
CREATE TABLE look (
  id TEXT NOT NULL PRIMARY KEY,
  car_id TEXT REFERENCES car (id),
  engine_id TEXT REFERENCES engine (id),
  what TEXT NOT NULL, -- Something a person looked at before a run.
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
  CHECK (car_id IS NOT NULL OR engine_id IS NOT NULL),
  CHECK (rev >= 1)
) STRICT;

-- A maker's notice about parts of a batch.
CREATE TABLE notice (
  id TEXT NOT NULL PRIMARY KEY,
  number TEXT NOT NULL,
  maker TEXT NOT NULL,
  dated TEXT NOT NULL, -- day, 2026-07-05
  design_id TEXT REFERENCES part_design (id),
  batch TEXT NOT NULL,
  marks TEXT NOT NULL,
  asks TEXT NOT NULL,
  holds INTEGER NOT NULL, -- 1 yes, 0 no
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (holds IN (0, 1)),
  CHECK (rev >= 1)
) STRICT;

-- Somebody who was told of a maker's notice.
CREATE TABLE notice_told (
  id TEXT NOT NULL PRIMARY KEY,
  notice_id TEXT NOT NULL REFERENCES notice (id),
  who TEXT NOT NULL,
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  how TEXT NOT NULL,
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

-- What a maker's notice asked for, done on one part.
CREATE TABLE notice_done (
  id TEXT NOT NULL PRIMARY KEY,
  notice_id TEXT NOT NULL REFERENCES notice (id),
  part_id TEXT NOT NULL REFERENCES part (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  done TEXT NOT NULL,
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

-- What an hour meter showed.
CREATE TABLE meter_reading (
  id TEXT NOT NULL PRIMARY KEY,
  meter_id TEXT NOT NULL REFERENCES part (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  shows_ms INTEGER NOT NULL, -- milliseconds
  "by" TEXT NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (rev >= 1)
) STRICT;

CREATE INDEX quarantine_part ON quarantine (part_id) WHERE standing = 'in force';
CREATE INDEX scrapping_part ON scrapping (part_id) WHERE standing = 'in force';
CREATE INDEX sent_out_part ON sent_out (part_id) WHERE standing = 'in force';
CREATE INDEX stock_move_stock ON stock_move (stock_id) WHERE standing = 'in force';
CREATE INDEX joint_engine ON joint (engine_id, at_utc_ms) WHERE standing = 'in force';
CREATE INDEX meter_reading_meter ON meter_reading (meter_id, at_utc_ms) WHERE standing = 'in force';

-- Guards of the history, as for every other record.

CREATE TRIGGER tool_no_delete BEFORE DELETE ON tool BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER tool_no_replace BEFORE INSERT ON tool
WHEN EXISTS (SELECT 1 FROM tool WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM tool WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER tool_amended BEFORE UPDATE ON tool
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM tool WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER calibration_no_delete BEFORE DELETE ON calibration BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER calibration_no_replace BEFORE INSERT ON calibration
WHEN EXISTS (SELECT 1 FROM calibration WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM calibration WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER calibration_amended BEFORE UPDATE ON calibration
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM calibration WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER stock_batch_no_delete BEFORE DELETE ON stock_batch BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER stock_batch_no_replace BEFORE INSERT ON stock_batch
WHEN EXISTS (SELECT 1 FROM stock_batch WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM stock_batch WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER stock_batch_amended BEFORE UPDATE ON stock_batch
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM stock_batch WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER job_no_delete BEFORE DELETE ON job BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER job_no_replace BEFORE INSERT ON job
WHEN EXISTS (SELECT 1 FROM job WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM job WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER job_amended BEFORE UPDATE ON job
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM job WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER job_part_no_delete BEFORE DELETE ON job_part BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER job_part_no_replace BEFORE INSERT ON job_part
WHEN EXISTS (SELECT 1 FROM job_part WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM job_part WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER job_part_amended BEFORE UPDATE ON job_part
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM job_part WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER stock_move_no_delete BEFORE DELETE ON stock_move BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER stock_move_no_replace BEFORE INSERT ON stock_move
WHEN EXISTS (SELECT 1 FROM stock_move WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM stock_move WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER stock_move_amended BEFORE UPDATE ON stock_move
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM stock_move WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER listed_part_no_delete BEFORE DELETE ON listed_part BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER listed_part_no_replace BEFORE INSERT ON listed_part
WHEN EXISTS (SELECT 1 FROM listed_part WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM listed_part WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER listed_part_amended BEFORE UPDATE ON listed_part
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM listed_part WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER quarantine_no_delete BEFORE DELETE ON quarantine BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER quarantine_no_replace BEFORE INSERT ON quarantine
WHEN EXISTS (SELECT 1 FROM quarantine WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM quarantine WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER quarantine_amended BEFORE UPDATE ON quarantine
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM quarantine WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER scrapping_no_delete BEFORE DELETE ON scrapping BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER scrapping_no_replace BEFORE INSERT ON scrapping
WHEN EXISTS (SELECT 1 FROM scrapping WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM scrapping WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER scrapping_amended BEFORE UPDATE ON scrapping
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM scrapping WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER sent_out_no_delete BEFORE DELETE ON sent_out BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER sent_out_no_replace BEFORE INSERT ON sent_out
WHEN EXISTS (SELECT 1 FROM sent_out WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM sent_out WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER sent_out_amended BEFORE UPDATE ON sent_out
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM sent_out WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER chase_no_delete BEFORE DELETE ON chase BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER chase_no_replace BEFORE INSERT ON chase
WHEN EXISTS (SELECT 1 FROM chase WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM chase WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER chase_amended BEFORE UPDATE ON chase
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM chase WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER concession_no_delete BEFORE DELETE ON concession BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER concession_no_replace BEFORE INSERT ON concession
WHEN EXISTS (SELECT 1 FROM concession WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM concession WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER concession_amended BEFORE UPDATE ON concession
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM concession WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER track_repair_no_delete BEFORE DELETE ON track_repair BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER track_repair_no_replace BEFORE INSERT ON track_repair
WHEN EXISTS (SELECT 1 FROM track_repair WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM track_repair WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER track_repair_amended BEFORE UPDATE ON track_repair
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM track_repair WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER build_proof_no_delete BEFORE DELETE ON build_proof BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER build_proof_no_replace BEFORE INSERT ON build_proof
WHEN EXISTS (SELECT 1 FROM build_proof WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM build_proof WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER build_proof_amended BEFORE UPDATE ON build_proof
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM build_proof WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER seal_no_delete BEFORE DELETE ON seal BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER seal_no_replace BEFORE INSERT ON seal
WHEN EXISTS (SELECT 1 FROM seal WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM seal WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER seal_amended BEFORE UPDATE ON seal
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM seal WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER joint_no_delete BEFORE DELETE ON joint BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER joint_no_replace BEFORE INSERT ON joint
WHEN EXISTS (SELECT 1 FROM joint WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM joint WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER joint_amended BEFORE UPDATE ON joint
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM joint WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER look_no_delete BEFORE DELETE ON look BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER look_no_replace BEFORE INSERT ON look
WHEN EXISTS (SELECT 1 FROM look WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM look WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER look_amended BEFORE UPDATE ON look
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM look WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER notice_no_delete BEFORE DELETE ON notice BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER notice_no_replace BEFORE INSERT ON notice
WHEN EXISTS (SELECT 1 FROM notice WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM notice WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER notice_amended BEFORE UPDATE ON notice
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM notice WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER notice_told_no_delete BEFORE DELETE ON notice_told BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER notice_told_no_replace BEFORE INSERT ON notice_told
WHEN EXISTS (SELECT 1 FROM notice_told WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM notice_told WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER notice_told_amended BEFORE UPDATE ON notice_told
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM notice_told WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER notice_done_no_delete BEFORE DELETE ON notice_done BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER notice_done_no_replace BEFORE INSERT ON notice_done
WHEN EXISTS (SELECT 1 FROM notice_done WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM notice_done WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER notice_done_amended BEFORE UPDATE ON notice_done
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM notice_done WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER meter_reading_no_delete BEFORE DELETE ON meter_reading BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER meter_reading_no_replace BEFORE INSERT ON meter_reading
WHEN EXISTS (SELECT 1 FROM meter_reading WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM meter_reading WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER meter_reading_amended BEFORE UPDATE ON meter_reading
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM meter_reading WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

-- A name is taken once.
CREATE TRIGGER tool_name_insert BEFORE INSERT ON tool
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM tool WHERE standing = 'in force' AND mark = NEW.mark AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER tool_name_update BEFORE UPDATE ON tool
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM tool WHERE standing = 'in force' AND mark = NEW.mark AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER stock_batch_name_insert BEFORE INSERT ON stock_batch
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM stock_batch WHERE standing = 'in force' AND batch = NEW.batch AND design_id = NEW.design_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER stock_batch_name_update BEFORE UPDATE ON stock_batch
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM stock_batch WHERE standing = 'in force' AND batch = NEW.batch AND design_id = NEW.design_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER seal_name_insert BEFORE INSERT ON seal
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM seal WHERE standing = 'in force' AND number = NEW.number AND engine_id = NEW.engine_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER seal_name_update BEFORE UPDATE ON seal
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM seal WHERE standing = 'in force' AND number = NEW.number AND engine_id = NEW.engine_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER notice_name_insert BEFORE INSERT ON notice
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM notice WHERE standing = 'in force' AND number = NEW.number AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER notice_name_update BEFORE UPDATE ON notice
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM notice WHERE standing = 'in force' AND number = NEW.number AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;

-- A whole part that is put aside, away or scrapped is not fitted at that time, and the other way round.
CREATE TRIGGER fitment_quarantine_insert BEFORE INSERT ON fitment
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM quarantine AS apart WHERE apart.standing = 'in force' AND apart.part_id = NEW.part_id AND apart.member = ''
    AND apart.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807)
    AND NEW.from_utc_ms < coalesce(apart.to_utc_ms, 9223372036854775807))
BEGIN SELECT RAISE(ABORT, 'PART_IN_QUARANTINE'); END;
CREATE TRIGGER fitment_quarantine_update BEFORE UPDATE ON fitment
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM quarantine AS apart WHERE apart.standing = 'in force' AND apart.part_id = NEW.part_id AND apart.member = ''
    AND apart.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807)
    AND NEW.from_utc_ms < coalesce(apart.to_utc_ms, 9223372036854775807))
BEGIN SELECT RAISE(ABORT, 'PART_IN_QUARANTINE'); END;
CREATE TRIGGER fitment_sent_out_insert BEFORE INSERT ON fitment
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM sent_out AS apart WHERE apart.standing = 'in force' AND apart.part_id = NEW.part_id
    AND apart.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807)
    AND NEW.from_utc_ms < coalesce(apart.back_utc_ms, 9223372036854775807))
BEGIN SELECT RAISE(ABORT, 'PART_AWAY'); END;
CREATE TRIGGER fitment_sent_out_update BEFORE UPDATE ON fitment
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM sent_out AS apart WHERE apart.standing = 'in force' AND apart.part_id = NEW.part_id
    AND apart.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807)
    AND NEW.from_utc_ms < coalesce(apart.back_utc_ms, 9223372036854775807))
BEGIN SELECT RAISE(ABORT, 'PART_AWAY'); END;
CREATE TRIGGER fitment_scrapping_insert BEFORE INSERT ON fitment
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM scrapping AS apart WHERE apart.standing = 'in force' AND apart.part_id = NEW.part_id AND apart.member = ''
    AND apart.at_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807))
BEGIN SELECT RAISE(ABORT, 'PART_SCRAPPED'); END;
CREATE TRIGGER fitment_scrapping_update BEFORE UPDATE ON fitment
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM scrapping AS apart WHERE apart.standing = 'in force' AND apart.part_id = NEW.part_id AND apart.member = ''
    AND apart.at_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807))
BEGIN SELECT RAISE(ABORT, 'PART_SCRAPPED'); END;
CREATE TRIGGER quarantine_fitted_insert BEFORE INSERT ON quarantine
WHEN NEW.standing = 'in force' AND NEW.member = ''
  AND EXISTS (SELECT 1 FROM fitment AS there WHERE there.standing = 'in force' AND there.part_id = NEW.part_id
    AND NEW.from_utc_ms < coalesce(there.to_utc_ms, 9223372036854775807)
    AND there.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807))
BEGIN SELECT RAISE(ABORT, 'PART_STILL_FITTED'); END;
CREATE TRIGGER quarantine_fitted_update BEFORE UPDATE ON quarantine
WHEN NEW.standing = 'in force' AND NEW.member = ''
  AND EXISTS (SELECT 1 FROM fitment AS there WHERE there.standing = 'in force' AND there.part_id = NEW.part_id
    AND NEW.from_utc_ms < coalesce(there.to_utc_ms, 9223372036854775807)
    AND there.from_utc_ms < coalesce(NEW.to_utc_ms, 9223372036854775807))
BEGIN SELECT RAISE(ABORT, 'PART_STILL_FITTED'); END;
CREATE TRIGGER sent_out_fitted_insert BEFORE INSERT ON sent_out
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM fitment AS there WHERE there.standing = 'in force' AND there.part_id = NEW.part_id
    AND NEW.from_utc_ms < coalesce(there.to_utc_ms, 9223372036854775807)
    AND there.from_utc_ms < coalesce(NEW.back_utc_ms, 9223372036854775807))
BEGIN SELECT RAISE(ABORT, 'PART_STILL_FITTED'); END;
CREATE TRIGGER sent_out_fitted_update BEFORE UPDATE ON sent_out
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM fitment AS there WHERE there.standing = 'in force' AND there.part_id = NEW.part_id
    AND NEW.from_utc_ms < coalesce(there.to_utc_ms, 9223372036854775807)
    AND there.from_utc_ms < coalesce(NEW.back_utc_ms, 9223372036854775807))
BEGIN SELECT RAISE(ABORT, 'PART_STILL_FITTED'); END;
CREATE TRIGGER scrapping_fitted_insert BEFORE INSERT ON scrapping
WHEN NEW.standing = 'in force' AND NEW.member = ''
  AND EXISTS (SELECT 1 FROM fitment AS there WHERE there.standing = 'in force' AND there.part_id = NEW.part_id
    AND NEW.at_utc_ms < coalesce(there.to_utc_ms, 9223372036854775807))
BEGIN SELECT RAISE(ABORT, 'PART_STILL_FITTED'); END;
CREATE TRIGGER scrapping_fitted_update BEFORE UPDATE ON scrapping
WHEN NEW.standing = 'in force' AND NEW.member = ''
  AND EXISTS (SELECT 1 FROM fitment AS there WHERE there.standing = 'in force' AND there.part_id = NEW.part_id
    AND NEW.at_utc_ms < coalesce(there.to_utc_ms, 9223372036854775807))
BEGIN SELECT RAISE(ABORT, 'PART_STILL_FITTED'); END;

-- Nothing is taken from a shelf that does not hold it.
CREATE TRIGGER stock_move_insert BEFORE INSERT ON stock_move
WHEN NEW.standing = 'in force' AND NEW.change < 0
  AND NEW.change + (SELECT coalesce(sum(change), 0) FROM stock_move WHERE standing = 'in force' AND stock_id = NEW.stock_id) < 0
BEGIN SELECT RAISE(ABORT, 'STOCK_BELOW_NOTHING'); END;
CREATE TRIGGER stock_move_update BEFORE UPDATE ON stock_move
WHEN NEW.standing <> 'in conflict'
  AND (CASE WHEN NEW.standing = 'in force' THEN NEW.change ELSE 0 END)
    + (SELECT coalesce(sum(change), 0) FROM stock_move WHERE standing = 'in force' AND stock_id = NEW.stock_id AND id <> NEW.id) < 0
BEGIN SELECT RAISE(ABORT, 'STOCK_BELOW_NOTHING'); END;
