-- Closed lists of words. Each is a table, so that a word can be added without rebuilding the tables that use it.

-- Whether an entry counts.
CREATE TABLE standing (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO standing (code) VALUES
  ('in force'),
  ('struck out'),
  ('in conflict');

-- What a life is counted in.
CREATE TABLE counter (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO counter (code) VALUES
  ('running'),
  ('loaded'),
  ('high speed'),
  ('distance'),
  ('laps'),
  ('race starts'),
  ('engine starts'),
  ('heat cycles'),
  ('pulls'),
  ('over-revs');

-- What kind of part it is.
CREATE TABLE part_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO part_kind (code) VALUES
  ('crank'),
  ('rods'),
  ('rod bolts'),
  ('pistons'),
  ('rings'),
  ('big-end shells'),
  ('main shells'),
  ('block'),
  ('head'),
  ('head gasket'),
  ('head studs'),
  ('valve springs'),
  ('inlet valves'),
  ('exhaust valves'),
  ('cam followers'),
  ('camshafts'),
  ('timing chain'),
  ('oil pump'),
  ('water pump'),
  ('oil and filter'),
  ('damper'),
  ('flywheel'),
  ('clutch'),
  ('gearbox'),
  ('oil cooler'),
  ('lines'),
  ('harness'),
  ('sensor'),
  ('hour meter'),
  ('other');

-- What a run was for.
CREATE TABLE run_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO run_kind (code) VALUES
  ('practice'),
  ('qualifying'),
  ('race'),
  ('test'),
  ('dyno'),
  ('warm-up'),
  ('road'),
  ('other');

-- How the start of a run is known.
CREATE TABLE start_known (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO start_known (code) VALUES
  ('timetable'),
  ('trace'),
  ('typed'),
  ('estimate');

-- What the highest engine speed was read from.
CREATE TABLE speed_source (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO speed_source (code) VALUES
  ('logger'),
  ('tell-tale'),
  ('driver');

-- Whether the driver was asked about a missed gear.
CREATE TABLE driver_asked (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO driver_asked (code) VALUES
  ('said yes'),
  ('said no'),
  ('not asked');

-- How well a life carried in is known.
CREATE TABLE prior_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO prior_kind (code) VALUES
  ('known'),
  ('told'),
  ('unknown');

-- Work done on a part or engine.
CREATE TABLE work_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO work_kind (code) VALUES
  ('skim'),
  ('crack test'),
  ('look'),
  ('measure'),
  ('repair'),
  ('clean'),
  ('oil change');

-- How a work ended.
CREATE TABLE work_result (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO work_result (code) VALUES
  ('done'),
  ('failed');

-- Why a planned run was not taken.
CREATE TABLE missed_how (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO missed_how (code) VALUES
  ('did not start'),
  ('withdrawn'),
  ('not entered');

-- What falls due at a limit.
CREATE TABLE limit_action (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO limit_action (code) VALUES
  ('look'),
  ('renew');

-- Whose limit it is.
CREATE TABLE limit_rank (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO limit_rank (code) VALUES
  ('rule book'),
  ('maker'),
  ('builder'),
  ('own');
