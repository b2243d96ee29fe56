-- What was written when, by whom and why; which logbook this is; and what was typed and not yet saved.

-- Which logbook this is. One row.
CREATE TABLE logbook (
  only_row INTEGER NOT NULL PRIMARY KEY CHECK (only_row = 1),
  id TEXT NOT NULL,
  made_at_ms INTEGER NOT NULL -- milliseconds since 1970-01-01T00:00Z
) STRICT;

-- One change to one record. Folding the amendments of a record, in the order of clock, device and number, gives the
-- record back.
CREATE TABLE amendment (
  id TEXT NOT NULL PRIMARY KEY,
  device TEXT NOT NULL,
  number INTEGER NOT NULL, -- running number of the device, from 1
  clock_ms INTEGER NOT NULL, -- hybrid logical clock, milliseconds since 1970-01-01T00:00Z
  clock_tick INTEGER NOT NULL, -- counts within that millisecond
  who TEXT NOT NULL,
  change_id TEXT NOT NULL, -- amendments written together share it
  table_name TEXT NOT NULL,
  record_id TEXT NOT NULL,
  before TEXT NOT NULL, -- JSON object of the columns changed, as they were; {} when the record was new
  after TEXT NOT NULL, -- JSON object of the same columns, as they became
  why TEXT NOT NULL,
  schema_version INTEGER NOT NULL,
  previous_hash TEXT NOT NULL, -- hash of the device's previous amendment; empty for its first
  hash TEXT NOT NULL, -- SHA-256 over everything else here, hexadecimal
  UNIQUE (device, number),
  CHECK (number >= 1),
  CHECK (clock_tick >= 0)
) STRICT;
CREATE INDEX amendment_record ON amendment (table_name, record_id);
CREATE INDEX amendment_change ON amendment (change_id);
CREATE INDEX amendment_clock ON amendment (clock_ms, clock_tick);

CREATE TRIGGER amendment_no_update BEFORE UPDATE ON amendment BEGIN SELECT RAISE(ABORT, 'HISTORY_STANDS'); END;
CREATE TRIGGER amendment_no_delete BEFORE DELETE ON amendment BEGIN SELECT RAISE(ABORT, 'HISTORY_STANDS'); END;
CREATE TRIGGER amendment_no_replace BEFORE INSERT ON amendment
WHEN EXISTS (SELECT 1 FROM amendment WHERE id = NEW.id)
  OR EXISTS (SELECT 1 FROM amendment WHERE device = NEW.device AND number = NEW.number)
BEGIN SELECT RAISE(ABORT, 'HISTORY_STANDS'); END;

-- What was typed and not yet saved, one for each form and record. Outside the history.
CREATE TABLE draft (
  form TEXT NOT NULL,
  record TEXT NOT NULL,
  fields TEXT NOT NULL, -- JSON object, field name to text as typed
  kept_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  PRIMARY KEY (form, record)
) STRICT;
