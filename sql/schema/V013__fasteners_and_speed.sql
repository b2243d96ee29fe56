-- What bolts and studs are, as far as their pull is worked out of it.

CREATE TABLE fastener (
  id TEXT NOT NULL PRIMARY KEY,
  design_id TEXT NOT NULL REFERENCES part_design (id),
  count INTEGER,
  diameter_nm INTEGER NOT NULL, -- nanometres
  nut_factor TEXT, -- decimal, torque over pull times diameter
  lubricant TEXT NOT NULL,
  stretched_diameter_nm INTEGER, -- nanometres
  stretched_length_nm INTEGER, -- nanometres
  modulus_gigapascals INTEGER,
  proof_newtons INTEGER,
  makers_pull_newtons INTEGER,
  chosen_for_pa INTEGER, -- pascals
  source TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (count >= 1),
  CHECK (diameter_nm >= 1),
  CHECK (stretched_diameter_nm >= 1),
  CHECK (stretched_length_nm >= 1),
  CHECK (modulus_gigapascals >= 1),
  CHECK (proof_newtons >= 1),
  CHECK (makers_pull_newtons >= 1),
  CHECK (chosen_for_pa >= 1),
  CHECK (rev >= 1)
) STRICT;

CREATE TRIGGER fastener_no_delete BEFORE DELETE ON fastener BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER fastener_no_replace BEFORE INSERT ON fastener
WHEN EXISTS (SELECT 1 FROM fastener WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM fastener WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER fastener_amended BEFORE UPDATE ON fastener
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM fastener WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

-- What engines are made of and how hot they get, as far as their fit at speed is worked out of it.

-- What a part is made of.
CREATE TABLE metal (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO metal (code) VALUES
  ('cast iron'),
  ('steel'),
  ('aluminium'),
  ('titanium');

INSERT INTO measure_kind (code) VALUES
  ('rod shank section'),
  ('rod stretch at the red line'),
  ('depth of the mark at the crown');

CREATE TABLE speed_figures (
  id TEXT NOT NULL PRIMARY KEY,
  design_id TEXT NOT NULL REFERENCES engine_design (id),
  block TEXT REFERENCES metal (code),
  crank TEXT REFERENCES metal (code),
  rods TEXT REFERENCES metal (code),
  pistons TEXT REFERENCES metal (code),
  block_hot_mk INTEGER, -- millikelvin
  crank_hot_mk INTEGER, -- millikelvin
  rods_hot_mk INTEGER, -- millikelvin
  pistons_hot_mk INTEGER, -- millikelvin
  block_cold_mk INTEGER, -- millikelvin
  pistons_cold_mk INTEGER, -- millikelvin
  main_spacing_nm INTEGER, -- nanometres
  margin_nm INTEGER, -- nanometres
  source TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (main_spacing_nm >= 1),
  CHECK (margin_nm >= 0),
  CHECK (rev >= 1)
) STRICT;

CREATE TRIGGER speed_figures_no_delete BEFORE DELETE ON speed_figures BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER speed_figures_no_replace BEFORE INSERT ON speed_figures
WHEN EXISTS (SELECT 1 FROM speed_figures WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM speed_figures WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER speed_figures_amended BEFORE UPDATE ON speed_figures
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM speed_figures WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;
