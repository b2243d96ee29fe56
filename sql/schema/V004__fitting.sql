-- Builds, what is fitted where, and work done.

-- An engine opened, worked on and closed.
CREATE TABLE build (
  id TEXT NOT NULL PRIMARY KEY,
  engine_id TEXT NOT NULL REFERENCES engine (id),
  number INTEGER NOT NULL,
  zones TEXT NOT NULL, -- zones opened, joined by semicolons
  opened_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  opened_zone TEXT NOT NULL, -- name of a time zone
  opened_offset_s INTEGER NOT NULL, -- seconds east of UTC
  closed_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  closed_zone TEXT, -- name of a time zone
  closed_offset_s INTEGER, -- seconds east of UTC
  signed_by TEXT NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((closed_utc_ms IS NULL) = (closed_zone IS NULL) AND (closed_utc_ms IS NULL) = (closed_offset_s IS NULL)),
  CHECK (opened_utc_ms <= closed_utc_ms),
  CHECK (rev >= 1)
) STRICT;
CREATE INDEX build_number ON build (engine_id, number) WHERE standing = 'in force';

-- A part in a position for a time.
CREATE TABLE fitment (
  id TEXT NOT NULL PRIMARY KEY,
  part_id TEXT NOT NULL REFERENCES part (id),
  engine_id TEXT REFERENCES engine (id),
  car_id TEXT REFERENCES car (id),
  position_id TEXT NOT NULL REFERENCES position (id),
  from_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  from_zone TEXT NOT NULL, -- name of a time zone
  from_offset_s INTEGER NOT NULL, -- seconds east of UTC
  to_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  to_zone TEXT, -- name of a time zone
  to_offset_s INTEGER, -- seconds east of UTC
  build_in_id TEXT REFERENCES build (id),
  build_out_id TEXT REFERENCES build (id),
  why TEXT NOT NULL,
  condition TEXT NOT NULL,
  borrowed INTEGER NOT NULL, -- 1 yes, 0 no
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (borrowed IN (0, 1)),
  CHECK ((to_utc_ms IS NULL) = (to_zone IS NULL) AND (to_utc_ms IS NULL) = (to_offset_s IS NULL)),
  CHECK ((engine_id IS NULL) <> (car_id IS NULL)),
  CHECK (from_utc_ms < to_utc_ms),
  CHECK (rev >= 1)
) STRICT;
CREATE INDEX fitment_place ON fitment (position_id, engine_id, car_id, from_utc_ms) WHERE standing = 'in force';
CREATE INDEX fitment_part ON fitment (part_id, from_utc_ms) WHERE standing = 'in force';

-- Work done on an engine or a part.
CREATE TABLE work (
  id TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL REFERENCES work_kind (code),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  engine_id TEXT REFERENCES engine (id),
  part_id TEXT REFERENCES part (id),
  result TEXT NOT NULL REFERENCES work_result (code),
  removed_nm INTEGER, -- nanometres
  left_nm INTEGER, -- nanometres
  "by" TEXT NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (engine_id IS NOT NULL OR part_id IS NOT NULL),
  CHECK (rev >= 1)
) STRICT;
