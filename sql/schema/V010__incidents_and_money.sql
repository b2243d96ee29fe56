-- What broke and why, what was decided, what it all cost, and what the bank says of it.

-- How bad an incident was.
CREATE TABLE severity (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO severity (code) VALUES
  ('note'),
  ('lost time'),
  ('lost run'),
  ('retired'),
  ('withdrawn by us'),
  ('stopped by officials'),
  ('did not start'),
  ('engine destroyed');

-- When an incident showed itself.
CREATE TABLE found_when (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO found_when (code) VALUES
  ('on a run'),
  ('at a check'),
  ('at strip');

-- What an incident did to a part.
CREATE TABLE part_harm (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO part_harm (code) VALUES
  ('failed'),
  ('damaged'),
  ('suspected');

-- Where a cause lies.
CREATE TABLE cause_area (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO cause_area (code) VALUES
  ('run past its limit'),
  ('wear'),
  ('part as made'),
  ('design'),
  ('assembly'),
  ('upkeep'),
  ('records'),
  ('tools and measuring'),
  ('oil system'),
  ('cooling'),
  ('fuel and mixture'),
  ('wiring'),
  ('driver'),
  ('from outside'),
  ('not found');

-- What a decision looks like afterwards.
CREATE TABLE verdict (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO verdict (code) VALUES
  ('right'),
  ('wrong'),
  ('accepted');

-- How a run ended in the results.
CREATE TABLE result_how (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO result_how (code) VALUES
  ('finished'),
  ('retired'),
  ('did not start'),
  ('withdrawn by us'),
  ('black-flagged'),
  ('disqualified'),
  ('not entered');

-- What a rate is for.
CREATE TABLE rate_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO rate_kind (code) VALUES
  ('own labour'),
  ('engine running');

-- What money went on.
CREATE TABLE cost_category (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO cost_category (code) VALUES
  ('entry'),
  ('test day'),
  ('travel'),
  ('transport'),
  ('accommodation'),
  ('crew'),
  ('crew food'),
  ('helper'),
  ('tyres'),
  ('fuel'),
  ('consumables'),
  ('hire'),
  ('engine hire'),
  ('parts'),
  ('machining'),
  ('inspection'),
  ('labour'),
  ('dyno'),
  ('freight'),
  ('tools'),
  ('repairs'),
  ('recovery'),
  ('other');

-- Whether money has gone, will go, or stands for own work.
CREATE TABLE cost_basis (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO cost_basis (code) VALUES
  ('cash'),
  ('committed'),
  ('valued');

-- What money came from.
CREATE TABLE income_kind (code TEXT NOT NULL PRIMARY KEY) STRICT;
INSERT INTO income_kind (code) VALUES
  ('prize'),
  ('start money'),
  ('sponsor'),
  ('customer'),
  ('sale'),
  ('insurance'),
  ('other');

-- The days a team counts as one season.
CREATE TABLE season (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  first_day TEXT NOT NULL, -- day, 2026-07-05
  last_day TEXT NOT NULL, -- day, 2026-07-05
  closed_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  closed_zone TEXT, -- name of a time zone
  closed_offset_s INTEGER, -- seconds east of UTC
  "by" TEXT NOT NULL,
  reported_budget_minor INTEGER, -- minor units of its currency, ISO 4217
  reported_budget_currency TEXT, -- ISO 4217
  reported_spent_minor INTEGER, -- minor units of its currency, ISO 4217
  reported_spent_currency TEXT, -- ISO 4217
  reported_income_minor INTEGER, -- minor units of its currency, ISO 4217
  reported_income_currency TEXT, -- ISO 4217
  reported_cash_minor INTEGER, -- minor units of its currency, ISO 4217
  reported_cash_currency TEXT, -- ISO 4217
  reported_labour_minor INTEGER, -- minor units of its currency, ISO 4217
  reported_labour_currency TEXT, -- ISO 4217
  reported_missed_minor INTEGER, -- minor units of its currency, ISO 4217
  reported_missed_currency TEXT, -- ISO 4217
  reported_running_ms INTEGER, -- milliseconds
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((closed_utc_ms IS NULL) = (closed_zone IS NULL) AND (closed_utc_ms IS NULL) = (closed_offset_s IS NULL)),
  CHECK ((reported_budget_minor IS NULL) = (reported_budget_currency IS NULL)),
  CHECK ((reported_spent_minor IS NULL) = (reported_spent_currency IS NULL)),
  CHECK ((reported_income_minor IS NULL) = (reported_income_currency IS NULL)),
  CHECK ((reported_cash_minor IS NULL) = (reported_cash_currency IS NULL)),
  CHECK ((reported_labour_minor IS NULL) = (reported_labour_currency IS NULL)),
  CHECK ((reported_missed_minor IS NULL) = (reported_missed_currency IS NULL)),
  CHECK (last_day >= first_day),
  CHECK (rev >= 1)
) STRICT;

-- Something that broke, stopped a car, or was found before it could.
CREATE TABLE incident (
  id TEXT NOT NULL PRIMARY KEY,
  mark TEXT NOT NULL,
  title TEXT NOT NULL,
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  found TEXT NOT NULL REFERENCES found_when (code),
  run_id TEXT REFERENCES run (id),
  event_id TEXT REFERENCES event (id),
  car_id TEXT REFERENCES car (id),
  engine_id TEXT REFERENCES engine (id),
  severity TEXT NOT NULL REFERENCES severity (code),
  seen TEXT NOT NULL,
  before_id TEXT REFERENCES incident (id),
  "by" TEXT NOT NULL,
  closed_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  closed_zone TEXT, -- name of a time zone
  closed_offset_s INTEGER, -- seconds east of UTC
  closed_by TEXT NOT NULL,
  closed_because TEXT NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((closed_utc_ms IS NULL) = (closed_zone IS NULL) AND (closed_utc_ms IS NULL) = (closed_offset_s IS NULL)),
  CHECK (closed_utc_ms >= at_utc_ms),
  CHECK (rev >= 1)
) STRICT;

-- A part an incident names, with its life as it was known then.
CREATE TABLE incident_part (
  id TEXT NOT NULL PRIMARY KEY,
  incident_id TEXT NOT NULL REFERENCES incident (id),
  part_id TEXT NOT NULL REFERENCES part (id),
  member TEXT NOT NULL,
  harm TEXT NOT NULL REFERENCES part_harm (code),
  ran_ms INTEGER, -- milliseconds
  at_least INTEGER NOT NULL, -- 1 yes, 0 no
  limit_ms INTEGER, -- milliseconds
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (at_least IN (0, 1)),
  CHECK (rev >= 1)
) STRICT;

-- A cause of an incident in a line.
CREATE TABLE cause (
  id TEXT NOT NULL PRIMARY KEY,
  incident_id TEXT NOT NULL REFERENCES incident (id),
  statement TEXT NOT NULL,
  area TEXT NOT NULL REFERENCES cause_area (code),
  share INTEGER, -- hundredths of a percent
  "by" TEXT NOT NULL,
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (share BETWEEN 0 AND 10000),
  CHECK (rev >= 1)
) STRICT;

-- What would have kept an incident from happening.
CREATE TABLE prevention (
  id TEXT NOT NULL PRIMARY KEY,
  incident_id TEXT NOT NULL REFERENCES incident (id),
  what TEXT NOT NULL,
  money_minor INTEGER, -- minor units of its currency, ISO 4217
  money_currency TEXT, -- ISO 4217
  minutes INTEGER, -- minutes of work
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((money_minor IS NULL) = (money_currency IS NULL)),
  CHECK (minutes >= 0),
  CHECK (rev >= 1)
) STRICT;

-- How much of what was missed is owed to an incident.
CREATE TABLE missed_share (
  id TEXT NOT NULL PRIMARY KEY,
  missed_id TEXT REFERENCES missed_run (id),
  run_id TEXT REFERENCES run (id),
  incident_id TEXT NOT NULL REFERENCES incident (id),
  share INTEGER NOT NULL, -- hundredths of a percent
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((missed_id IS NULL) <> (run_id IS NULL)),
  CHECK (share BETWEEN 1 AND 10000),
  CHECK (rev >= 1)
) STRICT;

-- A question that was put, and what was decided.
CREATE TABLE decision (
  id TEXT NOT NULL PRIMARY KEY,
  mark TEXT NOT NULL,
  question TEXT NOT NULL,
  asked_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  asked_zone TEXT NOT NULL, -- name of a time zone
  asked_offset_s INTEGER NOT NULL, -- seconds east of UTC
  engine_id TEXT REFERENCES engine (id),
  car_id TEXT REFERENCES car (id),
  event_id TEXT REFERENCES event (id),
  answers_id TEXT REFERENCES incident (id),
  adviser TEXT NOT NULL,
  advice TEXT NOT NULL,
  decided_utc_ms INTEGER, -- milliseconds since 1970-01-01T00:00Z
  decided_zone TEXT, -- name of a time zone
  decided_offset_s INTEGER, -- seconds east of UTC
  decided_by TEXT NOT NULL,
  dissent TEXT NOT NULL,
  outcome TEXT NOT NULL,
  verdict TEXT REFERENCES verdict (code),
  led_to_id TEXT REFERENCES incident (id),
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((decided_utc_ms IS NULL) = (decided_zone IS NULL) AND (decided_utc_ms IS NULL) = (decided_offset_s IS NULL)),
  CHECK (decided_utc_ms >= asked_utc_ms),
  CHECK (rev >= 1)
) STRICT;

-- One of the ways open in a decision.
CREATE TABLE decision_option (
  id TEXT NOT NULL PRIMARY KEY,
  decision_id TEXT NOT NULL REFERENCES decision (id),
  name TEXT NOT NULL,
  money_minor INTEGER, -- minor units of its currency, ISO 4217
  money_currency TEXT, -- ISO 4217
  minutes INTEGER, -- minutes of work
  days INTEGER,
  limit_id TEXT REFERENCES "limit" (id),
  past TEXT NOT NULL,
  taken INTEGER NOT NULL, -- 1 yes, 0 no
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((money_minor IS NULL) = (money_currency IS NULL)),
  CHECK (taken IN (0, 1)),
  CHECK (minutes >= 0),
  CHECK (days >= 0),
  CHECK (rev >= 1)
) STRICT;

-- What a car brought home from a run of an event.
CREATE TABLE result (
  id TEXT NOT NULL PRIMARY KEY,
  event_id TEXT NOT NULL REFERENCES event (id),
  car_id TEXT NOT NULL REFERENCES car (id),
  planned_id TEXT REFERENCES planned_run (id),
  at_utc_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  at_zone TEXT NOT NULL, -- name of a time zone
  at_offset_s INTEGER NOT NULL, -- seconds east of UTC
  how TEXT NOT NULL REFERENCES result_how (code),
  place INTEGER,
  points TEXT, -- decimal, points of a series
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (place >= 1),
  CHECK (rev >= 1)
) STRICT;

-- What an hour is valued at, from a day on.
CREATE TABLE hour_rate (
  id TEXT NOT NULL PRIMARY KEY,
  kind TEXT NOT NULL REFERENCES rate_kind (code),
  amount_minor INTEGER NOT NULL, -- minor units of its currency, ISO 4217
  amount_currency TEXT NOT NULL, -- ISO 4217
  "from" TEXT NOT NULL, -- day, 2026-07-05
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (amount_minor >= 0),
  CHECK (rev >= 1)
) STRICT;

-- Money that went, will go, or stands for own work.
CREATE TABLE cost_line (
  id TEXT NOT NULL PRIMARY KEY,
  day TEXT NOT NULL, -- day, 2026-07-05
  what TEXT NOT NULL,
  category TEXT NOT NULL REFERENCES cost_category (code),
  basis TEXT NOT NULL REFERENCES cost_basis (code),
  event_id TEXT REFERENCES event (id),
  car_id TEXT REFERENCES car (id),
  engine_id TEXT REFERENCES engine (id),
  incident_id TEXT REFERENCES incident (id),
  part_id TEXT REFERENCES part (id),
  work_id TEXT REFERENCES work (id),
  build_id TEXT REFERENCES build (id),
  planned INTEGER NOT NULL, -- 1 yes, 0 no
  allocated INTEGER NOT NULL, -- 1 yes, 0 no
  paid_minor INTEGER NOT NULL, -- minor units of its currency, ISO 4217
  paid_currency TEXT NOT NULL, -- ISO 4217
  tax_minor INTEGER, -- minor units of its currency, ISO 4217
  tax_currency TEXT, -- ISO 4217
  recovered_minor INTEGER NOT NULL, -- minor units of its currency, ISO 4217
  recovered_currency TEXT NOT NULL, -- ISO 4217
  carried_minor INTEGER NOT NULL, -- minor units of its currency, ISO 4217
  carried_currency TEXT NOT NULL, -- ISO 4217
  carried_until TEXT, -- day, 2026-07-05
  carried_used TEXT, -- day, 2026-07-05
  carried_to_id TEXT REFERENCES event (id),
  rate TEXT, -- decimal, home currency for one
  minutes INTEGER, -- minutes of work
  supplier TEXT NOT NULL,
  invoice TEXT NOT NULL,
  refund_by TEXT, -- day, 2026-07-05
  customer TEXT NOT NULL,
  charged_on TEXT, -- day, 2026-07-05
  note TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (planned IN (0, 1)),
  CHECK (allocated IN (0, 1)),
  CHECK ((tax_minor IS NULL) = (tax_currency IS NULL)),
  CHECK (recovered_minor >= 0),
  CHECK (carried_minor >= 0),
  CHECK (recovered_minor + carried_minor = 0 OR recovered_minor <= paid_minor - carried_minor),
  CHECK (recovered_currency = paid_currency AND carried_currency = paid_currency),
  CHECK (tax_currency = paid_currency),
  CHECK (minutes >= 0),
  CHECK (carried_used >= day),
  CHECK (rev >= 1)
) STRICT;

-- A car's part in a cost that several share.
CREATE TABLE cost_share (
  id TEXT NOT NULL PRIMARY KEY,
  line_id TEXT NOT NULL REFERENCES cost_line (id),
  car_id TEXT NOT NULL REFERENCES car (id),
  parts INTEGER NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (parts >= 1),
  CHECK (rev >= 1)
) STRICT;

-- What is planned to be spent.
CREATE TABLE budget_line (
  id TEXT NOT NULL PRIMARY KEY,
  day TEXT NOT NULL, -- day, 2026-07-05
  event_id TEXT REFERENCES event (id),
  car_id TEXT REFERENCES car (id),
  category TEXT NOT NULL REFERENCES cost_category (code),
  amount_minor INTEGER NOT NULL, -- minor units of its currency, ISO 4217
  amount_currency TEXT NOT NULL, -- ISO 4217
  rate TEXT, -- decimal, home currency for one
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

-- Money that came in.
CREATE TABLE income_line (
  id TEXT NOT NULL PRIMARY KEY,
  day TEXT NOT NULL, -- day, 2026-07-05
  what TEXT NOT NULL,
  kind TEXT NOT NULL REFERENCES income_kind (code),
  event_id TEXT REFERENCES event (id),
  car_id TEXT REFERENCES car (id),
  amount_minor INTEGER NOT NULL, -- minor units of its currency, ISO 4217
  amount_currency TEXT NOT NULL, -- ISO 4217
  rate TEXT, -- decimal, home currency for one
  "from" TEXT NOT NULL,
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

-- A line of a bank statement or of the books.
CREATE TABLE bank_line (
  id TEXT NOT NULL PRIMARY KEY,
  account TEXT NOT NULL,
  day TEXT NOT NULL, -- day, 2026-07-05
  amount_minor INTEGER NOT NULL, -- minor units of its currency, ISO 4217
  amount_currency TEXT NOT NULL, -- ISO 4217
  text TEXT NOT NULL,
  reference TEXT NOT NULL,
  nth INTEGER NOT NULL,
  source TEXT NOT NULL,
  aside TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (nth >= 1),
  CHECK (rev >= 1)
) STRICT;

-- A line of a statement and what it pays for.
CREATE TABLE bank_match (
  id TEXT NOT NULL PRIMARY KEY,
  bank_id TEXT NOT NULL REFERENCES bank_line (id),
  cost_id TEXT REFERENCES cost_line (id),
  income_id TEXT REFERENCES income_line (id),
  amount_minor INTEGER NOT NULL, -- minor units of its currency, ISO 4217
  amount_currency TEXT NOT NULL, -- ISO 4217
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK ((cost_id IS NULL) <> (income_id IS NULL)),
  CHECK (rev >= 1)
) STRICT;

-- How the columns of a bank's file are to be read.
CREATE TABLE statement_form (
  id TEXT NOT NULL PRIMARY KEY,
  name TEXT NOT NULL,
  headings TEXT NOT NULL,
  day_column TEXT NOT NULL,
  day_pattern TEXT NOT NULL,
  amount_column TEXT NOT NULL,
  in_column TEXT NOT NULL,
  out_column TEXT NOT NULL,
  text_columns TEXT NOT NULL,
  reference_column TEXT NOT NULL,
  currency_column TEXT NOT NULL,
  currency TEXT NOT NULL,
  decimal_sign TEXT NOT NULL,
  standing TEXT NOT NULL REFERENCES standing (code),
  struck_because TEXT,
  made_at_ms INTEGER NOT NULL, -- milliseconds since 1970-01-01T00:00Z
  made_by TEXT NOT NULL,
  amended_by TEXT NOT NULL UNIQUE REFERENCES amendment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  checksum TEXT NOT NULL,
  CHECK (rev >= 1)
) STRICT;

CREATE TRIGGER season_no_delete BEFORE DELETE ON season BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER season_no_replace BEFORE INSERT ON season
WHEN EXISTS (SELECT 1 FROM season WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM season WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER season_amended BEFORE UPDATE ON season
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM season WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER incident_no_delete BEFORE DELETE ON incident BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER incident_no_replace BEFORE INSERT ON incident
WHEN EXISTS (SELECT 1 FROM incident WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM incident WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER incident_amended BEFORE UPDATE ON incident
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM incident WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER incident_part_no_delete BEFORE DELETE ON incident_part BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER incident_part_no_replace BEFORE INSERT ON incident_part
WHEN EXISTS (SELECT 1 FROM incident_part WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM incident_part WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER incident_part_amended BEFORE UPDATE ON incident_part
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM incident_part WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER cause_no_delete BEFORE DELETE ON cause BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER cause_no_replace BEFORE INSERT ON cause
WHEN EXISTS (SELECT 1 FROM cause WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM cause WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER cause_amended BEFORE UPDATE ON cause
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM cause WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER prevention_no_delete BEFORE DELETE ON prevention BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER prevention_no_replace BEFORE INSERT ON prevention
WHEN EXISTS (SELECT 1 FROM prevention WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM prevention WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER prevention_amended BEFORE UPDATE ON prevention
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM prevention WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER missed_share_no_delete BEFORE DELETE ON missed_share BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER missed_share_no_replace BEFORE INSERT ON missed_share
WHEN EXISTS (SELECT 1 FROM missed_share WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM missed_share WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER missed_share_amended BEFORE UPDATE ON missed_share
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM missed_share WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER decision_no_delete BEFORE DELETE ON decision BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER decision_no_replace BEFORE INSERT ON decision
WHEN EXISTS (SELECT 1 FROM decision WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM decision WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER decision_amended BEFORE UPDATE ON decision
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM decision WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER decision_option_no_delete BEFORE DELETE ON decision_option BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER decision_option_no_replace BEFORE INSERT ON decision_option
WHEN EXISTS (SELECT 1 FROM decision_option WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM decision_option WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER decision_option_amended BEFORE UPDATE ON decision_option
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM decision_option WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER result_no_delete BEFORE DELETE ON result BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER result_no_replace BEFORE INSERT ON result
WHEN EXISTS (SELECT 1 FROM result WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM result WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER result_amended BEFORE UPDATE ON result
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM result WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER hour_rate_no_delete BEFORE DELETE ON hour_rate BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER hour_rate_no_replace BEFORE INSERT ON hour_rate
WHEN EXISTS (SELECT 1 FROM hour_rate WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM hour_rate WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER hour_rate_amended BEFORE UPDATE ON hour_rate
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM hour_rate WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER cost_line_no_delete BEFORE DELETE ON cost_line BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER cost_line_no_replace BEFORE INSERT ON cost_line
WHEN EXISTS (SELECT 1 FROM cost_line WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM cost_line WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER cost_line_amended BEFORE UPDATE ON cost_line
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM cost_line WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER cost_share_no_delete BEFORE DELETE ON cost_share BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER cost_share_no_replace BEFORE INSERT ON cost_share
WHEN EXISTS (SELECT 1 FROM cost_share WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM cost_share WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER cost_share_amended BEFORE UPDATE ON cost_share
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM cost_share WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER budget_line_no_delete BEFORE DELETE ON budget_line BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER budget_line_no_replace BEFORE INSERT ON budget_line
WHEN EXISTS (SELECT 1 FROM budget_line WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM budget_line WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER budget_line_amended BEFORE UPDATE ON budget_line
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM budget_line WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER income_line_no_delete BEFORE DELETE ON income_line BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER income_line_no_replace BEFORE INSERT ON income_line
WHEN EXISTS (SELECT 1 FROM income_line WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM income_line WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER income_line_amended BEFORE UPDATE ON income_line
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM income_line WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER bank_line_no_delete BEFORE DELETE ON bank_line BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER bank_line_no_replace BEFORE INSERT ON bank_line
WHEN EXISTS (SELECT 1 FROM bank_line WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM bank_line WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER bank_line_amended BEFORE UPDATE ON bank_line
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM bank_line WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER bank_match_no_delete BEFORE DELETE ON bank_match BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER bank_match_no_replace BEFORE INSERT ON bank_match
WHEN EXISTS (SELECT 1 FROM bank_match WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM bank_match WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER bank_match_amended BEFORE UPDATE ON bank_match
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM bank_match WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

CREATE TRIGGER statement_form_no_delete BEFORE DELETE ON statement_form BEGIN SELECT RAISE(ABORT, 'NOTHING_IS_DELETED'); END;
CREATE TRIGGER statement_form_no_replace BEFORE INSERT ON statement_form
WHEN EXISTS (SELECT 1 FROM statement_form WHERE id = NEW.id) OR EXISTS (SELECT 1 FROM statement_form WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'WRITTEN_ALREADY'); END;
CREATE TRIGGER statement_form_amended BEFORE UPDATE ON statement_form
WHEN NEW.amended_by = OLD.amended_by OR NEW.id <> OLD.id OR NEW.made_at_ms <> OLD.made_at_ms OR NEW.made_by <> OLD.made_by
  OR EXISTS (SELECT 1 FROM statement_form WHERE amended_by = NEW.amended_by)
BEGIN SELECT RAISE(ABORT, 'NO_AMENDMENT'); END;

-- A name is taken once.
CREATE TRIGGER season_name_insert BEFORE INSERT ON season
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM season WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER season_name_update BEFORE UPDATE ON season
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM season WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER incident_name_insert BEFORE INSERT ON incident
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM incident WHERE standing = 'in force' AND mark = NEW.mark AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER incident_name_update BEFORE UPDATE ON incident
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM incident WHERE standing = 'in force' AND mark = NEW.mark AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER decision_name_insert BEFORE INSERT ON decision
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM decision WHERE standing = 'in force' AND mark = NEW.mark AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER decision_name_update BEFORE UPDATE ON decision
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM decision WHERE standing = 'in force' AND mark = NEW.mark AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER decision_option_name_insert BEFORE INSERT ON decision_option
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM decision_option WHERE standing = 'in force' AND name = NEW.name AND decision_id = NEW.decision_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER decision_option_name_update BEFORE UPDATE ON decision_option
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM decision_option WHERE standing = 'in force' AND name = NEW.name AND decision_id = NEW.decision_id AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER statement_form_name_insert BEFORE INSERT ON statement_form
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM statement_form WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
CREATE TRIGGER statement_form_name_update BEFORE UPDATE ON statement_form
WHEN NEW.standing = 'in force'
  AND EXISTS (SELECT 1 FROM statement_form WHERE standing = 'in force' AND name = NEW.name AND id <> NEW.id)
BEGIN SELECT RAISE(ABORT, 'NAME_TAKEN'); END;
