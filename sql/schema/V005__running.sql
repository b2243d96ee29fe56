-- Events, runs and limits.

-- A race meeting, a test, a day on the dyno.
CREATE TABLE event (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  circuit TEXT NOT NULL,
  first_day TEXT NOT NULL, -- day, 2026-07-05
  last_day TEXT NOT NULL, -- day, 2026-07-05
  zone TEXT NOT NULL, -- name of a time zone
  truck_leaves_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  truck_leaves_zone TEXT, -- name of a time zone
  truck_leaves_offset_s INTEGER, -- seconds east of UTC
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((truck_leaves_utc_ms IS NULL) = (truck_leaves_zone IS NULL) AND (truck_leaves_utc_ms IS NULL) = (truck_leaves_offset_s IS NULL)),
  CHECK (first_day <= last_day),
  CHECK (rev >= 1)
) STRICT;
CREATE INDEX event_name ON event (name) WHERE standing = 'in force';

-- A run in the timetable of an event.
CREATE TABLE planned_run (
  id TEXT NOT NULL PRIMARY KEY,
  event_id TEXT NOT NULL REFERENCES event (id),
  ordinal INTEGER NOT NULL,
  kind TEXT NOT NULL REFERENCES run_kind (code),
  name TEXT NOT NULL,
  day TEXT NOT NULL, -- day, 2026-07-05
  out TEXT, -- time of day, 15:00
  expected_ms INTEGER, -- milliseconds
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (expected_ms >= 0),
  CHECK (rev >= 1)
) STRICT;
CREATE INDEX planned_run_name ON planned_run (event_id, name) WHERE standing = 'in force';

-- A car entered for an event.
CREATE TABLE event_entry (
  id TEXT NOT NULL PRIMARY KEY,
  event_id TEXT NOT NULL REFERENCES event (id),
  car_id TEXT NOT NULL REFERENCES car (id),
  engine_id TEXT REFERENCES engine (id),
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (rev >= 1)
) STRICT;

-- Once out and back.
CREATE TABLE run (
  id TEXT NOT NULL PRIMARY KEY,
  engine_id TEXT NOT NULL REFERENCES engine (id),
  car_id TEXT REFERENCES car (id),
  event_id TEXT REFERENCES event (id),
  planned_id TEXT REFERENCES planned_run (id),
  kind TEXT NOT NULL REFERENCES run_kind (code),
  name TEXT NOT NULL,
  start_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  start_zone TEXT NOT NULL, -- name of a time zone
  start_offset_s INTEGER NOT NULL, -- seconds east of UTC
  start_known TEXT NOT NULL REFERENCES start_known (code),
  in_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  in_zone TEXT, -- name of a time zone
  in_offset_s INTEGER, -- seconds east of UTC
  driver_id TEXT REFERENCES person (id),
  running_ms INTEGER NOT NULL, -- milliseconds
  known_by TEXT NOT NULL, -- counter=how, joined by semicolons
  track_ms INTEGER, -- milliseconds
  warm_up_ms INTEGER, -- milliseconds
  loaded_ms INTEGER, -- milliseconds
  high_speed_ms INTEGER, -- milliseconds
  distance_m INTEGER, -- metres
  laps INTEGER,
  race_starts INTEGER,
  engine_starts INTEGER,
  heat_cycles INTEGER,
  pulls INTEGER,
  over_revs INTEGER,
  highest_rpm INTEGER, -- revolutions per minute
  highest_from TEXT REFERENCES speed_source (code),
  water_highest_mk INTEGER, -- millikelvin
  oil_highest_mk INTEGER, -- millikelvin
  oil_pressure_pa INTEGER, -- pascals
  oil_added_ul INTEGER, -- microlitres
  ambient_mk INTEGER, -- millikelvin
  driver_asked TEXT NOT NULL REFERENCES driver_asked (code),
  remarks TEXT NOT NULL,
  as_typed TEXT NOT NULL,
  queried TEXT NOT NULL,
  perhaps_same_id TEXT REFERENCES run (id),
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (running_ms > 0),
  CHECK (track_ms >= 0),
  CHECK (warm_up_ms >= 0),
  CHECK (loaded_ms >= 0),
  CHECK (high_speed_ms >= 0),
  CHECK (distance_m >= 0),
  CHECK (laps >= 0),
  CHECK (race_starts >= 0),
  CHECK (engine_starts >= 0),
  CHECK (heat_cycles >= 0),
  CHECK (pulls >= 0),
  CHECK (over_revs >= 0),
  CHECK (highest_rpm >= 0),
  CHECK (water_highest_mk >= 0),
  CHECK (oil_highest_mk >= 0),
  CHECK (oil_added_ul >= 0),
  CHECK (ambient_mk >= 0),
  CHECK ((in_utc_ms IS NULL) = (in_zone IS NULL) AND (in_utc_ms IS NULL) = (in_offset_s IS NULL)),
  CHECK (start_utc_ms <= in_utc_ms),
  CHECK (rev >= 1)
) STRICT;
CREATE INDEX run_planned ON run (planned_id, car_id) WHERE standing = 'in force' AND perhaps_same_id IS NULL;

-- A start that was not taken.
CREATE TABLE missed_run (
  id TEXT NOT NULL PRIMARY KEY,
  event_id TEXT NOT NULL REFERENCES event (id),
  car_id TEXT NOT NULL REFERENCES car (id),
  engine_id TEXT REFERENCES engine (id),
  planned_id TEXT REFERENCES planned_run (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  how TEXT NOT NULL REFERENCES missed_how (code),
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

-- Running told by others.
CREATE TABLE told_running (
  id TEXT NOT NULL PRIMARY KEY,
  engine_id TEXT NOT NULL REFERENCES engine (id),
  from_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  from_zone TEXT NOT NULL, -- name of a time zone
  from_offset_s INTEGER NOT NULL, -- seconds east of UTC
  to_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  to_zone TEXT NOT NULL, -- name of a time zone
  to_offset_s INTEGER NOT NULL, -- seconds east of UTC
  likely_ms INTEGER NOT NULL, -- milliseconds
  lowest_ms INTEGER NOT NULL, -- milliseconds
  highest_ms INTEGER NOT NULL, -- milliseconds
  told_by TEXT NOT NULL,
  how_he_knows TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (likely_ms >= 0),
  CHECK (lowest_ms >= 0),
  CHECK (highest_ms >= 0),
  CHECK (from_utc_ms < to_utc_ms),
  CHECK (lowest_ms <= likely_ms AND likely_ms <= highest_ms),
  CHECK (rev >= 1)
) STRICT;

-- A figure at which something falls due.
CREATE TABLE "limit" (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  action TEXT NOT NULL REFERENCES limit_action (code),
  design_id TEXT REFERENCES engine_design (id),
  part_kind TEXT REFERENCES part_kind (code),
  part_design_id TEXT REFERENCES part_design (id),
  part_id TEXT REFERENCES part (id),
  engine_id TEXT REFERENCES engine (id),
  car_id TEXT REFERENCES car (id),
  counter TEXT NOT NULL REFERENCES counter (code),
  amount INTEGER NOT NULL, -- in the unit of the counter
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
  CHECK (amount > 0),
  CHECK (part_kind IS NOT NULL OR part_design_id IS NOT NULL OR part_id IS NOT NULL OR engine_id IS NOT NULL OR car_id IS NOT NULL),
  CHECK (rev >= 1)
) STRICT;
