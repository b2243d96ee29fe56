-- What loggers and dynos wrote, and the samples that are kept.

-- How an engine is left at the end of a trace.
CREATE TABLE heat_end (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO heat_end (code) VALUES
  ('cold'),
  ('hot'),
  ('as begun');

-- What was found at a place of a trace.
CREATE TABLE trace_mark_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO trace_mark_kind (code) VALUES
  ('over-rev on the limiter'),
  ('mechanical over-rev'),
  ('over-rev'),
  ('oil pressure dip'),
  ('implausible fall'),
  ('gap'),
  ('dropout'),
  ('spike'),
  ('time backwards'),
  ('restart'),
  ('duplicated sample'),
  ('not a number'),
  ('text in numbers'),
  ('repeated heading'),
  ('units row'),
  ('unreadable row'),
  ('short row'),
  ('long row'),
  ('cut off'),
  ('frozen'),
  ('offset at rest'),
  ('cranking noise'),
  ('sensor drop'),
  ('sensor jump');

-- What the figures of a dyno sheet are.
CREATE TABLE dyno_figures (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO dyno_figures (code) VALUES
  ('observed'),
  ('corrected');

-- To which standard power is corrected to its reference day.
CREATE TABLE correction_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO correction_kind (code) VALUES
  ('SAE J1349'),
  ('ISO 1585'),
  ('DIN 70020'),
  ('none');

-- What an air pressure is the pressure of.
CREATE TABLE air_pressure (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO air_pressure (code) VALUES
  ('total'),
  ('dry');

-- What a logger wrote of a run.
CREATE TABLE trace (
  id TEXT NOT NULL PRIMARY KEY,
  run_id TEXT NOT NULL REFERENCES run (id),
  name TEXT NOT NULL,
  content TEXT NOT NULL, -- SHA-256 of the file
  samples TEXT NOT NULL, -- SHA-256 of what was read in it
  size INTEGER NOT NULL, -- bytes
  begins_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  begins_zone TEXT, -- name of a time zone
  begins_offset_s INTEGER, -- seconds east of UTC
  lasted_ms INTEGER NOT NULL, -- milliseconds
  rows INTEGER NOT NULL,
  form TEXT NOT NULL,
  settings TEXT NOT NULL,
  running_ms INTEGER NOT NULL, -- milliseconds
  loaded_ms INTEGER, -- milliseconds
  high_speed_ms INTEGER, -- milliseconds
  distance_m INTEGER, -- metres
  highest_rpm INTEGER, -- revolutions a minute
  water_highest_mk INTEGER, -- millikelvin
  oil_highest_mk INTEGER, -- millikelvin
  oil_pressure_pa INTEGER, -- pascals
  pulls INTEGER,
  heat_from_cold INTEGER,
  heat_from_hot INTEGER,
  heat_end TEXT REFERENCES heat_end (code),
  speeds TEXT NOT NULL,
  defects TEXT NOT NULL,
  kept TEXT, -- SHA-256 of the kept samples
  "by" TEXT NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (size >= 1),
  CHECK (rows >= 1),
  CHECK (length(content) = 64),
  CHECK (length(samples) = 64),
  CHECK (kept IS NULL OR length(kept) = 64),
  CHECK ((heat_from_cold IS NULL) = (heat_end IS NULL)),
  CHECK ((heat_from_hot IS NULL) = (heat_end IS NULL)),
  CHECK ((begins_utc_ms IS NULL) = (begins_zone IS NULL)),
  CHECK ((begins_utc_ms IS NULL) = (begins_offset_s IS NULL)),
  CHECK (rev >= 1)
) STRICT;

-- Something found at a place of a trace.
CREATE TABLE trace_mark (
  id TEXT NOT NULL PRIMARY KEY,
  trace_id TEXT NOT NULL REFERENCES trace (id),
  kind TEXT NOT NULL REFERENCES trace_mark_kind (code),
  at_ms INTEGER NOT NULL, -- milliseconds after the first sample
  lasted_ms INTEGER, -- milliseconds
  channel TEXT NOT NULL,
  thousandths INTEGER, -- thousandths of the channel's unit
  words TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (rev >= 1)
) STRICT;

-- How files of a logger are read.
CREATE TABLE logger_form (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  headings TEXT NOT NULL,
  form TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (rev >= 1)
) STRICT;

-- What figures of traces are worked out with.
CREATE TABLE logger_figures (
  id TEXT NOT NULL PRIMARY KEY,
  design_id TEXT NOT NULL REFERENCES engine_design (id),
  running_above_rpm INTEGER, -- revolutions a minute
  loaded_above_rpm INTEGER, -- revolutions a minute
  high_speed_above_rpm INTEGER, -- revolutions a minute
  oil_floor_pa INTEGER, -- pascals for each 1000 revolutions a minute
  oil_floor_from_rpm INTEGER, -- revolutions a minute
  cold_below_mk INTEGER, -- millikelvin
  hot_above_mk INTEGER, -- millikelvin
  hot_for_ms INTEGER, -- milliseconds
  source TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (loaded_above_rpm >= running_above_rpm),
  CHECK (hot_above_mk > cold_below_mk),
  CHECK (rev >= 1)
) STRICT;

-- How speed wears a kind of part.
CREATE TABLE rev_exponent (
  id TEXT NOT NULL PRIMARY KEY,
  design_id TEXT NOT NULL REFERENCES engine_design (id),
  part_kind TEXT NOT NULL REFERENCES part_kind (code),
  reference_rpm INTEGER NOT NULL, -- revolutions a minute
  hundredths INTEGER NOT NULL, -- hundredths
  source TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (reference_rpm >= 1),
  CHECK (hundredths >= 1),
  CHECK (rev >= 1)
) STRICT;

-- What a dyno wrote of a run on it.
CREATE TABLE dyno_sheet (
  id TEXT NOT NULL PRIMARY KEY,
  run_id TEXT NOT NULL REFERENCES run (id),
  dyno TEXT NOT NULL,
  figures TEXT NOT NULL REFERENCES dyno_figures (code),
  correction TEXT NOT NULL REFERENCES correction_kind (code),
  factor_millionths INTEGER, -- millionths
  pressure_pa INTEGER, -- pascals
  pressure_is TEXT NOT NULL REFERENCES air_pressure (code),
  air_mk INTEGER, -- millikelvin
  humidity_permille INTEGER, -- thousandths
  sweep_rpm_per_second INTEGER,
  fuel TEXT NOT NULL,
  oil TEXT NOT NULL,
  plugs TEXT NOT NULL,
  map TEXT NOT NULL,
  operator TEXT NOT NULL,
  baseline INTEGER NOT NULL,
  verdict TEXT NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (factor_millionths >= 1),
  CHECK (humidity_permille BETWEEN 0 AND 1000),
  CHECK (sweep_rpm_per_second >= 1),
  CHECK (baseline IN (0, 1)),
  CHECK (figures <> 'corrected' OR correction <> 'none'),
  CHECK (rev >= 1)
) STRICT;

-- One speed of one pull.
CREATE TABLE dyno_point (
  id TEXT NOT NULL PRIMARY KEY,
  sheet_id TEXT NOT NULL REFERENCES dyno_sheet (id),
  pull INTEGER NOT NULL,
  speed_rpm INTEGER NOT NULL, -- revolutions a minute
  torque_millinewton_metres INTEGER NOT NULL, -- millinewton metres
  lambda_thousandths INTEGER, -- thousandths
  oil_pressure_pa INTEGER, -- pascals
  oil_mk INTEGER, -- millikelvin
  water_mk INTEGER, -- millikelvin
  exhaust TEXT NOT NULL, -- degrees Celsius of each cylinder
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (pull >= 1),
  CHECK (speed_rpm >= 1),
  CHECK (rev >= 1)
) STRICT;

-- One step of running an engine in.
CREATE TABLE run_in_step (
  id TEXT NOT NULL PRIMARY KEY,
  run_id TEXT NOT NULL REFERENCES run (id),
  number INTEGER NOT NULL,
  speed_rpm INTEGER, -- revolutions a minute
  load_permille INTEGER, -- thousandths of full load
  lasted_ms INTEGER NOT NULL, -- milliseconds
  words TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (number >= 1),
  CHECK (load_permille BETWEEN 0 AND 1000),
  CHECK (rev >= 1)
) STRICT;

-- Samples that are kept, in pieces, by the SHA-256 of the whole. What the samples are is said by their trace.
CREATE TABLE kept_piece (
  sha256 TEXT NOT NULL,
  number INTEGER NOT NULL, -- from 0
  bytes BLOB NOT NULL,
  PRIMARY KEY (sha256, number),
  CHECK (length(sha256) = 64),
  CHECK (number >= 0),
  CHECK (length(bytes) BETWEEN 1 AND 1048576)
) STRICT, WITHOUT ROWID;

-- With which tester a reading was made.
ALTER TABLE reading ADD COLUMN tool_id TEXT REFERENCES tool (id);

CREATE TRIGGER trace_no_delete BEFORE DELETE ON trace BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER trace_no_replace BEFORE INSERT ON trace
WHEN EXISTS (SELECT 1 FROM trace WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM trace WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER trace_amended BEFORE UPDATE ON trace
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM trace WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER trace_mark_no_delete BEFORE DELETE ON trace_mark BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER trace_mark_no_replace BEFORE INSERT ON trace_mark
WHEN EXISTS (SELECT 1 FROM trace_mark WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM trace_mark WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER trace_mark_amended BEFORE UPDATE ON trace_mark
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM trace_mark WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER logger_form_no_delete BEFORE DELETE ON logger_form BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER logger_form_no_replace BEFORE INSERT ON logger_form
WHEN EXISTS (SELECT 1 FROM logger_form WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM logger_form WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER logger_form_amended BEFORE UPDATE ON logger_form
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM logger_form WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER logger_figures_no_delete BEFORE DELETE ON logger_figures BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER logger_figures_no_replace BEFORE INSERT ON logger_figures
WHEN EXISTS (SELECT 1 FROM logger_figures WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM logger_figures WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER logger_figures_amended BEFORE UPDATE ON logger_figures
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM logger_figures WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER rev_exponent_no_delete BEFORE DELETE ON rev_exponent BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER rev_exponent_no_replace BEFORE INSERT ON rev_exponent
WHEN EXISTS (SELECT 1 FROM rev_exponent WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM rev_exponent WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER rev_exponent_amended BEFORE UPDATE ON rev_exponent
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM rev_exponent WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER dyno_sheet_no_delete BEFORE DELETE ON dyno_sheet BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER dyno_sheet_no_replace BEFORE INSERT ON dyno_sheet
WHEN EXISTS (SELECT 1 FROM dyno_sheet WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM dyno_sheet WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER dyno_sheet_amended BEFORE UPDATE ON dyno_sheet
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM dyno_sheet WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER dyno_point_no_delete BEFORE DELETE ON dyno_point BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER dyno_point_no_replace BEFORE INSERT ON dyno_point
WHEN EXISTS (SELECT 1 FROM dyno_point WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM dyno_point WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER dyno_point_amended BEFORE UPDATE ON dyno_point
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM dyno_point WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER run_in_step_no_delete BEFORE DELETE ON run_in_step BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER run_in_step_no_replace BEFORE INSERT ON run_in_step
WHEN EXISTS (SELECT 1 FROM run_in_step WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM run_in_step WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER run_in_step_amended BEFORE UPDATE ON run_in_step
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM run_in_step WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER kept_piece_no_delete BEFORE DELETE ON kept_piece BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER kept_piece_no_replace BEFORE INSERT ON kept_piece
WHEN EXISTS (SELECT 1 FROM kept_piece WHERE sha256 = NEW.sha256 AND number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER kept_piece_no_update BEFORE UPDATE ON kept_piece BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
