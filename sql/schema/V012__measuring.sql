-- What is measured while an engine goes together, what it may be, and what stood when it was signed.

-- What stands on a build sheet.
CREATE TABLE measure_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO measure_kind (code) VALUES
  ('block deck height'),
  ('deck flatness'),
  ('deck finish Ra'),
  ('deck finish Rz'),
  ('bore'),
  ('bore finish Ra'),
  ('main housing'),
  ('main bearing bore'),
  ('main journal'),
  ('main bearing clearance'),
  ('crank pin'),
  ('crank run-out'),
  ('crank end float'),
  ('rod length'),
  ('rod bend in 100 mm'),
  ('rod twist in 100 mm'),
  ('big-end housing'),
  ('big-end housing ovality'),
  ('big-end bore'),
  ('big-end clearance'),
  ('rod side clearance'),
  ('rod bolt length before'),
  ('rod bolt stretch'),
  ('rod bolt length after'),
  ('pin clearance in the piston'),
  ('pin clearance in the rod'),
  ('piston diameter'),
  ('top land diameter'),
  ('top land height'),
  ('compression height'),
  ('crown volume'),
  ('top ring gap'),
  ('second ring gap'),
  ('oil rail gap'),
  ('ring side clearance'),
  ('piston mass'),
  ('pin mass'),
  ('rings and locks mass'),
  ('rod big-end mass'),
  ('rod small-end mass'),
  ('deck clearance'),
  ('head thickness'),
  ('head flatness'),
  ('head finish Ra'),
  ('head finish Rz'),
  ('chamber volume'),
  ('chamber opening area'),
  ('squish pad recess'),
  ('gasket thickness'),
  ('gasket bore'),
  ('gasket off centre'),
  ('fire-ring inset'),
  ('squish by wire'),
  ('inlet valve to piston'),
  ('exhaust valve to piston'),
  ('inlet spring fitted height'),
  ('inlet spring seat force'),
  ('inlet spring open force'),
  ('inlet coil-bind margin'),
  ('inlet lash'),
  ('exhaust spring fitted height'),
  ('exhaust spring seat force'),
  ('exhaust spring open force'),
  ('exhaust coil-bind margin'),
  ('exhaust lash'),
  ('inlet valve angle'),
  ('inlet cam timing'),
  ('exhaust valve angle'),
  ('exhaust cam timing'),
  ('cam sprocket pitch radius'),
  ('bore taper'),
  ('bore ovality'),
  ('piston to wall'),
  ('journal ovality'),
  ('journal taper'),
  ('crank pin ovality'),
  ('crank pin taper'),
  ('rod bolt left longer'),
  ('deck clearance, mean'),
  ('swept volume'),
  ('clearance volume'),
  ('piston rock'),
  ('deck clearance spread'),
  ('crown to head'),
  ('fire ring into the bore'),
  ('fire ring over the crown'),
  ('compression ratio'),
  ('compression ratio spread'),
  ('chamber volume spread'),
  ('piston mass spread'),
  ('cut off the crown');

-- Where at its place something is measured.
CREATE TABLE spot (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO spot (code) VALUES
  ('thrust side'),
  ('anti-thrust side'),
  ('top, across'),
  ('top, along'),
  ('middle, across'),
  ('middle, along'),
  ('bottom, across'),
  ('bottom, along'),
  ('top'),
  ('bottom'),
  ('front, upright'),
  ('front, across'),
  ('rear, upright'),
  ('rear, across'),
  ('upright'),
  ('across'),
  ('front, exhaust side'),
  ('front, inlet side'),
  ('rear, exhaust side'),
  ('rear, inlet side'),
  ('along the exhaust side'),
  ('along the inlet side'),
  ('front end'),
  ('rear end'),
  ('diagonal from front exhaust'),
  ('diagonal from front inlet'),
  ('between the bores'),
  ('middle'),
  ('free'),
  ('trial-clamped'),
  ('after run'),
  ('ring, free'),
  ('ring, clamped'),
  ('body, free'),
  ('body, clamped'),
  ('front'),
  ('exhaust side'),
  ('rear'),
  ('inlet side'),
  ('valve A'),
  ('valve B'),
  ('bolt A'),
  ('bolt B');

-- How a part stood while it was measured.
CREATE TABLE how_stood (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO how_stood (code) VALUES
  ('not said'),
  ('pushed down'),
  ('hanging'),
  ('pulled up'),
  ('bare'),
  ('plate on'),
  ('tightened'),
  ('hot');

-- How a figure stands against its limits.
CREATE TABLE fit_verdict (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO fit_verdict (code) VALUES
  ('inside'),
  ('off aim'),
  ('outside'),
  ('no limit'),
  ('not measured');

-- What a head gasket is made like.
CREATE TABLE gasket_class (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO gasket_class (code) VALUES
  ('composite'),
  ('copper'),
  ('copper with wire'),
  ('multi-layer steel'),
  ('gas ring');

-- What a figure of a build sheet may be, and what is aimed at.
CREATE TABLE size_limit (
  id TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL REFERENCES measure_kind (code),
  spot TEXT REFERENCES spot (code),
  design_id TEXT REFERENCES engine_design (id),
  part_design_id TEXT REFERENCES part_design (id),
  at_least INTEGER, -- whole parts of the dimension of its kind
  at_most INTEGER, -- whole parts of the dimension of its kind
  aim_least INTEGER, -- whole parts of the dimension of its kind
  aim_most INTEGER, -- whole parts of the dimension of its kind
  rank TEXT NOT NULL,
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
  CHECK (design_id IS NOT NULL OR part_design_id IS NOT NULL),
  CHECK (at_least <= at_most),
  CHECK (aim_least <= aim_most),
  CHECK (rev >= 1)
) STRICT;

-- A figure of a build sheet as measured.
CREATE TABLE measurement (
  id TEXT NOT NULL PRIMARY KEY,
  build_id TEXT NOT NULL REFERENCES build (id),
  kind TEXT NOT NULL REFERENCES measure_kind (code),
  number INTEGER,
  spot TEXT REFERENCES spot (code),
  value INTEGER NOT NULL, -- whole parts of the dimension of its kind
  typed TEXT NOT NULL,
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  tool_id TEXT REFERENCES tool (id),
  temperature_mk INTEGER,
  stood TEXT NOT NULL REFERENCES how_stood (code),
  in_use INTEGER NOT NULL, -- 1 yes, 0 no
  "by" TEXT NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (in_use IN (0, 1)),
  CHECK (number >= 1),
  CHECK (rev >= 1)
) STRICT;

-- A build sheet signed.
CREATE TABLE sign_off (
  id TEXT NOT NULL PRIMARY KEY,
  build_id TEXT NOT NULL REFERENCES build (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  "by" TEXT NOT NULL,
  second TEXT NOT NULL,
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

-- A check as it stood when its sheet was signed.
CREATE TABLE signed_check (
  id TEXT NOT NULL PRIMARY KEY,
  sign_off_id TEXT NOT NULL REFERENCES sign_off (id),
  kind TEXT NOT NULL REFERENCES measure_kind (code),
  number INTEGER,
  spot TEXT REFERENCES spot (code),
  value INTEGER, -- whole parts of the dimension of its kind
  at_least INTEGER, -- whole parts of the dimension of its kind
  at_most INTEGER, -- whole parts of the dimension of its kind
  source TEXT NOT NULL,
  verdict TEXT NOT NULL REFERENCES fit_verdict (code),
  accepted TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (number >= 1),
  CHECK ((value IS NULL) = (verdict = 'not measured')),
  CHECK (rev >= 1)
) STRICT;

CREATE TRIGGER size_limit_no_delete BEFORE DELETE ON size_limit BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER size_limit_no_replace BEFORE INSERT ON size_limit
WHEN EXISTS (SELECT 1 FROM size_limit WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM size_limit WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER size_limit_amended BEFORE UPDATE ON size_limit
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM size_limit WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER measurement_no_delete BEFORE DELETE ON measurement BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER measurement_no_replace BEFORE INSERT ON measurement
WHEN EXISTS (SELECT 1 FROM measurement WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM measurement WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER measurement_amended BEFORE UPDATE ON measurement
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM measurement WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER sign_off_no_delete BEFORE DELETE ON sign_off BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER sign_off_no_replace BEFORE INSERT ON sign_off
WHEN EXISTS (SELECT 1 FROM sign_off WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM sign_off WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER sign_off_amended BEFORE UPDATE ON sign_off
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM sign_off WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER signed_check_no_delete BEFORE DELETE ON signed_check BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER signed_check_no_replace BEFORE INSERT ON signed_check
WHEN EXISTS (SELECT 1 FROM signed_check WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM signed_check WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER signed_check_amended BEFORE UPDATE ON signed_check
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM signed_check WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

-- One figure of a place counts.
CREATE INDEX measurement_at ON measurement (build_id, kind);
CREATE TRIGGER measurement_one_in_use_insert BEFORE INSERT ON measurement
WHEN NEW.standing = 'in force' AND NEW.in_use = 1
  AND EXISTS (SELECT 1 FROM measurement WHERE standing = 'in force' AND in_use = 1 AND build_id = NEW.build_id AND kind = NEW.kind
    AND number IS NEW.number AND spot IS NEW.spot AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'FIGURE_IN_USE'); END;
CREATE TRIGGER measurement_one_in_use_update BEFORE UPDATE ON measurement
WHEN NEW.standing = 'in force' AND NEW.in_use = 1
  AND EXISTS (SELECT 1 FROM measurement WHERE standing = 'in force' AND in_use = 1 AND build_id = NEW.build_id AND kind = NEW.kind
    AND number IS NEW.number AND spot IS NEW.spot AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'FIGURE_IN_USE'); END;

-- What was known of designs before, and what a concession is about.
ALTER TABLE engine_design ADD COLUMN mains INTEGER CHECK (mains >= 1);
ALTER TABLE part_design ADD COLUMN gasket_class TEXT REFERENCES gasket_class (code);
ALTER TABLE concession ADD COLUMN kind TEXT REFERENCES measure_kind (code);
ALTER TABLE concession ADD COLUMN number INTEGER CHECK (number >= 1);
