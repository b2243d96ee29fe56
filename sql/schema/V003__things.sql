-- The team, its people, cars, engines and parts.
-- Every table ends with the same columns: standing, why it was struck out, when it was made and by whom, the amendment
-- that wrote it last, how many times it was written, and the SHA-256 of its values as that amendment left them.

-- The team whose logbook this is.
CREATE TABLE team (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  zone TEXT NOT NULL, -- name of a time zone
  currency TEXT NOT NULL,
  running_above_rpm INTEGER NOT NULL, -- revolutions per minute
  loaded_above_rpm INTEGER NOT NULL, -- revolutions per minute
  high_speed_above_rpm INTEGER NOT NULL, -- revolutions per minute
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (running_above_rpm >= 0),
  CHECK (loaded_above_rpm >= 0),
  CHECK (high_speed_above_rpm >= 0),
  CHECK (rev >= 1)
) STRICT;

-- Who writes, drives or signs.
CREATE TABLE person (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  role TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (rev >= 1)
) STRICT;
CREATE INDEX person_name ON person (name) WHERE standing = 'in force';

-- What engines of one make have in common.
CREATE TABLE engine_design (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  cylinders INTEGER NOT NULL,
  layout TEXT NOT NULL,
  bore_nm INTEGER, -- nanometres
  stroke_nm INTEGER, -- nanometres
  rod_length_nm INTEGER, -- nanometres
  firing_order TEXT,
  measuring_order TEXT,
  red_line_rpm INTEGER, -- revolutions per minute
  over_rev_above_rpm INTEGER, -- revolutions per minute
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (red_line_rpm >= 0),
  CHECK (over_rev_above_rpm >= 0),
  CHECK (cylinders >= 1),
  CHECK (rev >= 1)
) STRICT;
CREATE INDEX engine_design_name ON engine_design (name) WHERE standing = 'in force';

-- A car the team runs.
CREATE TABLE car (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
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
CREATE INDEX car_name ON car (name) WHERE standing = 'in force';

-- Where a part sits, in every engine of a design or in one car.
CREATE TABLE position (
  id TEXT NOT NULL PRIMARY KEY,
  design_id TEXT REFERENCES engine_design (id),
  car_id TEXT REFERENCES car (id),
  kind TEXT NOT NULL REFERENCES part_kind (code),
  name TEXT NOT NULL,
  ordinal INTEGER NOT NULL,
  needed INTEGER NOT NULL, -- 1 yes, 0 no
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (needed IN (0, 1)),
  CHECK ((design_id IS NULL) <> (car_id IS NULL)),
  CHECK (rev >= 1)
) STRICT;
CREATE INDEX position_name ON position (name, design_id, car_id) WHERE standing = 'in force';

-- One engine, whatever is in it.
CREATE TABLE engine (
  id TEXT NOT NULL PRIMARY KEY,
  number TEXT NOT NULL,
  design_id TEXT NOT NULL REFERENCES engine_design (id),
  owner TEXT,
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
CREATE INDEX engine_number ON engine (number) WHERE standing = 'in force';

-- An engine in a car for a time.
CREATE TABLE engine_in_car (
  id TEXT NOT NULL PRIMARY KEY,
  engine_id TEXT NOT NULL REFERENCES engine (id),
  car_id TEXT NOT NULL REFERENCES car (id),
  from_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  from_zone TEXT NOT NULL, -- name of a time zone
  from_offset_s INTEGER NOT NULL, -- seconds east of UTC
  to_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  to_zone TEXT, -- name of a time zone
  to_offset_s INTEGER, -- seconds east of UTC
  note TEXT NOT NULL,
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
CREATE INDEX engine_in_car_engine ON engine_in_car (engine_id, from_utc_ms) WHERE standing = 'in force';
CREATE INDEX engine_in_car_car ON engine_in_car (car_id, from_utc_ms) WHERE standing = 'in force';

-- What parts of one make have in common.
CREATE TABLE part_design (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  kind TEXT NOT NULL REFERENCES part_kind (code),
  maker TEXT NOT NULL,
  part_number TEXT NOT NULL,
  single_use INTEGER NOT NULL, -- 1 yes, 0 no
  can_wreck INTEGER NOT NULL, -- 1 yes, 0 no
  specification TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (single_use IN (0, 1)),
  CHECK (can_wreck IN (0, 1)),
  CHECK (rev >= 1)
) STRICT;
CREATE INDEX part_design_name ON part_design (name) WHERE standing = 'in force';

-- One part, or a set fitted and counted together.
CREATE TABLE part (
  id TEXT NOT NULL PRIMARY KEY,
  mark TEXT NOT NULL,
  design_id TEXT NOT NULL REFERENCES part_design (id),
  batch TEXT NOT NULL,
  supplier TEXT NOT NULL,
  bought_on TEXT, -- day, 2026-07-05
  made_on TEXT, -- day, 2026-07-05
  use_by TEXT, -- day, 2026-07-05
  of_set_id TEXT REFERENCES part (id),
  member_mark TEXT,
  split_at_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  split_at_zone TEXT, -- name of a time zone
  split_at_offset_s INTEGER, -- seconds east of UTC
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((split_at_utc_ms IS NULL) = (split_at_zone IS NULL) AND (split_at_utc_ms IS NULL) = (split_at_offset_s IS NULL)),
  CHECK ((of_set_id IS NULL) = (split_at_utc_ms IS NULL)),
  CHECK ((of_set_id IS NULL) = (member_mark IS NULL)),
  CHECK (rev >= 1)
) STRICT;
CREATE INDEX part_mark ON part (mark) WHERE standing = 'in force';
CREATE INDEX part_design_used ON part (design_id) WHERE standing = 'in force';

-- One member of a set.
CREATE TABLE set_member (
  id TEXT NOT NULL PRIMARY KEY,
  set_id TEXT NOT NULL REFERENCES part (id),
  mark TEXT NOT NULL,
  ordinal INTEGER NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (rev >= 1)
) STRICT;
CREATE INDEX set_member_mark ON set_member (set_id, mark) WHERE standing = 'in force';

-- Life carried in from before the logbook, stated at a moment.
CREATE TABLE prior_life (
  id TEXT NOT NULL PRIMARY KEY,
  part_id TEXT REFERENCES part (id),
  engine_id TEXT REFERENCES engine (id),
  counter TEXT NOT NULL REFERENCES counter (code),
  kind TEXT NOT NULL REFERENCES prior_kind (code),
  amount INTEGER NOT NULL, -- in the unit of the counter
  lowest INTEGER NOT NULL, -- in the unit of the counter
  highest INTEGER NOT NULL, -- in the unit of the counter
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  words TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((part_id IS NULL) <> (engine_id IS NULL)),
  CHECK (lowest >= 0 AND lowest <= amount),
  CHECK (kind = 'unknown' OR amount <= highest),
  CHECK (rev >= 1)
) STRICT;
