-- Faces of head, gasket and block: their outline, what was found on them, and what skims took.

-- Which face of a joint.
CREATE TABLE face_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO face_kind (code) VALUES
  ('head, face to the block'),
  ('gasket, side to the head'),
  ('gasket, side to the block'),
  ('block, face to the head');

-- What a hole in a face is for.
CREATE TABLE hole_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO hole_kind (code) VALUES
  ('bore'),
  ('stud'),
  ('dowel'),
  ('water'),
  ('oil'),
  ('other');

-- How a face was looked at.
CREATE TABLE face_method (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO face_method (code) VALUES
  ('straightedge and feelers'),
  ('plate and dial'),
  ('measuring machine'),
  ('blue on a plate'),
  ('by eye');

-- What is marked on a face.
CREATE TABLE face_mark_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO face_mark_kind (code) VALUES
  ('low area'),
  ('proud area'),
  ('shadow'),
  ('no blue'),
  ('gas track'),
  ('split ring'),
  ('unsealed patch'),
  ('eaten away'),
  ('crack'),
  ('weld'),
  ('soft');

-- A side of an engine, seen from its front end.
CREATE TABLE front_side (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO front_side (code) VALUES
  ('left'),
  ('right');

-- What was seen of the shadow after a pass.
CREATE TABLE skim_shadow (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO skim_shadow (code) VALUES
  ('shadow left'),
  ('clean'),
  ('not said');

-- Whether cams were timed again after a skim.
CREATE TABLE retimed (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO retimed (code) VALUES
  ('timed again'),
  ('not timed again'),
  ('not said');

-- The joint face of engines of a design.
CREATE TABLE face_outline (
  id TEXT NOT NULL PRIMARY KEY,
  design_id TEXT NOT NULL REFERENCES engine_design (id),
  length_nm INTEGER NOT NULL, -- nanometres
  width_nm INTEGER NOT NULL, -- nanometres
  front_end TEXT NOT NULL,
  exhaust TEXT NOT NULL REFERENCES front_side (code),
  source TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (length_nm >= 1),
  CHECK (width_nm >= 1),
  CHECK (rev >= 1)
) STRICT;

-- A bore or another hole in it.
CREATE TABLE face_hole (
  id TEXT NOT NULL PRIMARY KEY,
  outline_id TEXT NOT NULL REFERENCES face_outline (id),
  kind TEXT NOT NULL REFERENCES hole_kind (code),
  number INTEGER,
  x_nm INTEGER NOT NULL, -- nanometres from the front end
  y_nm INTEGER NOT NULL, -- nanometres from the inlet edge
  diameter_nm INTEGER NOT NULL, -- nanometres
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (diameter_nm >= 1),
  CHECK (kind <> 'bore' OR number IS NOT NULL AND number >= 1),
  CHECK (rev >= 1)
) STRICT;

-- A face looked at or measured once.
CREATE TABLE face_look (
  id TEXT NOT NULL PRIMARY KEY,
  part_id TEXT NOT NULL REFERENCES part (id),
  face TEXT NOT NULL REFERENCES face_kind (code),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  method TEXT NOT NULL REFERENCES face_method (code),
  finest_nm INTEGER NOT NULL, -- nanometres
  tool_id TEXT REFERENCES tool (id),
  "by" TEXT NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (finest_nm >= 1),
  CHECK (rev >= 1)
) STRICT;

-- A reading of a grid over it.
CREATE TABLE face_point (
  id TEXT NOT NULL PRIMARY KEY,
  look_id TEXT NOT NULL REFERENCES face_look (id),
  x_nm INTEGER NOT NULL, -- nanometres from the front end
  y_nm INTEGER NOT NULL, -- nanometres from the inlet edge
  depth_nm INTEGER NOT NULL, -- nanometres, below 0 where it stands proud
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (rev >= 1)
) STRICT;

-- What goes under a straightedge along one of its lines.
CREATE TABLE face_line (
  id TEXT NOT NULL PRIMARY KEY,
  look_id TEXT NOT NULL REFERENCES face_look (id),
  line TEXT NOT NULL REFERENCES spot (code),
  number INTEGER,
  goes_nm INTEGER NOT NULL, -- nanometres
  stops_nm INTEGER, -- nanometres
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (goes_nm >= 0),
  CHECK (stops_nm > goes_nm),
  CHECK ((number IS NOT NULL) = (line = 'between the bores')),
  CHECK (rev >= 1)
) STRICT;

-- A low area, a shadow or another mark on it.
CREATE TABLE face_mark (
  id TEXT NOT NULL PRIMARY KEY,
  look_id TEXT NOT NULL REFERENCES face_look (id),
  kind TEXT NOT NULL REFERENCES face_mark_kind (code),
  x_nm INTEGER NOT NULL, -- nanometres from the front end
  y_nm INTEGER NOT NULL, -- nanometres from the inlet edge
  along_nm INTEGER, -- nanometres
  across_nm INTEGER, -- nanometres
  outline TEXT NOT NULL, -- corners in millimetres, 180 120, 230 120, 205 160; empty for none
  depth_nm INTEGER, -- nanometres, below 0 where it stands proud
  words TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (along_nm >= 1),
  CHECK (across_nm >= 1),
  CHECK ((along_nm IS NULL) = (across_nm IS NULL)),
  CHECK (along_nm IS NULL OR outline = ''),
  CHECK (rev >= 1)
) STRICT;

-- What a skim found and left; the rest stands in its work.
CREATE TABLE skim (
  id TEXT NOT NULL PRIMARY KEY,
  work_id TEXT NOT NULL REFERENCES work (id),
  face TEXT NOT NULL REFERENCES face_kind (code),
  front_exhaust_nm INTEGER, -- nanometres
  front_inlet_nm INTEGER, -- nanometres
  rear_exhaust_nm INTEGER, -- nanometres
  rear_inlet_nm INTEGER, -- nanometres
  flat_after_nm INTEGER, -- nanometres
  ra_nanometres INTEGER,
  rz_nanometres INTEGER,
  chamber_before_ul INTEGER, -- microlitres
  chamber_after_ul INTEGER, -- microlitres
  retimed TEXT NOT NULL REFERENCES retimed (code),
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (flat_after_nm >= 0),
  CHECK (ra_nanometres >= 1),
  CHECK (rz_nanometres >= 1),
  CHECK (rev >= 1)
) STRICT;

-- One pass of the cutter.
CREATE TABLE skim_pass (
  id TEXT NOT NULL PRIMARY KEY,
  skim_id TEXT NOT NULL REFERENCES skim (id),
  number INTEGER NOT NULL,
  depth_nm INTEGER NOT NULL, -- nanometres
  shadow TEXT NOT NULL REFERENCES skim_shadow (code),
  "where" TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (number >= 1),
  CHECK (depth_nm >= 1),
  CHECK (rev >= 1)
) STRICT;

CREATE TRIGGER face_outline_no_delete BEFORE DELETE ON face_outline BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER face_outline_no_replace BEFORE INSERT ON face_outline
WHEN EXISTS (SELECT 1 FROM face_outline WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM face_outline WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER face_outline_amended BEFORE UPDATE ON face_outline
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM face_outline WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER face_hole_no_delete BEFORE DELETE ON face_hole BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER face_hole_no_replace BEFORE INSERT ON face_hole
WHEN EXISTS (SELECT 1 FROM face_hole WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM face_hole WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER face_hole_amended BEFORE UPDATE ON face_hole
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM face_hole WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER face_look_no_delete BEFORE DELETE ON face_look BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER face_look_no_replace BEFORE INSERT ON face_look
WHEN EXISTS (SELECT 1 FROM face_look WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM face_look WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER face_look_amended BEFORE UPDATE ON face_look
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM face_look WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER face_point_no_delete BEFORE DELETE ON face_point BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER face_point_no_replace BEFORE INSERT ON face_point
WHEN EXISTS (SELECT 1 FROM face_point WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM face_point WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER face_point_amended BEFORE UPDATE ON face_point
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM face_point WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER face_line_no_delete BEFORE DELETE ON face_line BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER face_line_no_replace BEFORE INSERT ON face_line
WHEN EXISTS (SELECT 1 FROM face_line WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM face_line WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER face_line_amended BEFORE UPDATE ON face_line
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM face_line WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER face_mark_no_delete BEFORE DELETE ON face_mark BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER face_mark_no_replace BEFORE INSERT ON face_mark
WHEN EXISTS (SELECT 1 FROM face_mark WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM face_mark WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER face_mark_amended BEFORE UPDATE ON face_mark
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM face_mark WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER skim_no_delete BEFORE DELETE ON skim BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER skim_no_replace BEFORE INSERT ON skim
WHEN EXISTS (SELECT 1 FROM skim WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM skim WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER skim_amended BEFORE UPDATE ON skim
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM skim WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER skim_pass_no_delete BEFORE DELETE ON skim_pass BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER skim_pass_no_replace BEFORE INSERT ON skim_pass
WHEN EXISTS (SELECT 1 FROM skim_pass WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM skim_pass WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER skim_pass_amended BEFORE UPDATE ON skim_pass
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM skim_pass WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;
