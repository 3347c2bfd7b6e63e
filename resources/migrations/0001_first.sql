-- A centre's first schema, for SQLite and PostgreSQL alike. Every primary key begins with the centre. Times are bigint seconds
-- since 1970 (UTC), amounts bigint in base units (see the suffix), wall times ISO 8601 text, lists JSON text. `version` of a row
-- is the number of the change that wrote it. There are no CHECK constraints: SQLite leaves them out of quick_check on a file that is
-- open for reading only, and so the look before opening would miss what they find; words are checked where rows are read.

CREATE TABLE changes (
  centre_id text NOT NULL PRIMARY KEY,
  counter bigint NOT NULL
);

CREATE TABLE operations (
  centre_id text NOT NULL,
  id text NOT NULL,
  kind text NOT NULL,
  person text,
  happened_at bigint NOT NULL,
  name text NOT NULL,
  counter bigint NOT NULL,
  PRIMARY KEY (centre_id, id)
);

CREATE TABLE edited_rows (
  centre_id text NOT NULL,
  operation_id text NOT NULL,
  kind text NOT NULL,
  row_id text NOT NULL,
  PRIMARY KEY (centre_id, kind, row_id, operation_id),
  FOREIGN KEY (centre_id, operation_id) REFERENCES operations (centre_id, id)
);

CREATE TABLE replacing (
  centre_id text NOT NULL PRIMARY KEY
);

CREATE TABLE centres (
  centre_id text NOT NULL,
  id text NOT NULL,
  name text NOT NULL,
  zone text NOT NULL,
  lanes bigint NOT NULL,
  settings text NOT NULL,
  version bigint NOT NULL,
  PRIMARY KEY (centre_id, id)
);

CREATE TABLE machines (
  centre_id text NOT NULL,
  id text NOT NULL,
  name text NOT NULL,
  attended bigint NOT NULL,
  bars text NOT NULL,
  times text NOT NULL,
  capacity text NOT NULL,
  full_at_mv bigint NOT NULL,
  attach_spare_at_mv bigint NOT NULL,
  conditioners text NOT NULL,
  cleaner text NOT NULL,
  version bigint NOT NULL,
  PRIMARY KEY (centre_id, id)
);

CREATE TABLE people (
  centre_id text NOT NULL,
  id text NOT NULL,
  name text NOT NULL,
  role text NOT NULL,
  active bigint NOT NULL,
  version bigint NOT NULL,
  PRIMARY KEY (centre_id, id)
);

CREATE TABLE shifts (
  centre_id text NOT NULL,
  id text NOT NULL,
  name text NOT NULL,
  weekdays bigint NOT NULL,
  begins text NOT NULL,
  ends text NOT NULL,
  people bigint NOT NULL,
  overtime_before_s bigint NOT NULL,
  overtime_after_s bigint NOT NULL,
  days_off text NOT NULL,
  extra_days text NOT NULL,
  version bigint NOT NULL,
  PRIMARY KEY (centre_id, id)
);

CREATE TABLE patterns (
  centre_id text NOT NULL,
  id text NOT NULL,
  name text NOT NULL,
  strokes text NOT NULL,
  end_um bigint NOT NULL,
  clean_whole_lane bigint NOT NULL,
  note text NOT NULL,
  retired bigint NOT NULL,
  version bigint NOT NULL,
  PRIMARY KEY (centre_id, id)
);

CREATE TABLE outages (
  centre_id text NOT NULL,
  id text NOT NULL,
  lanes text NOT NULL,
  machine text,
  begins bigint NOT NULL,
  ends bigint,
  note text NOT NULL,
  version bigint NOT NULL,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, machine) REFERENCES machines (centre_id, id)
);

CREATE TABLE series (
  centre_id text NOT NULL,
  id text NOT NULL,
  uid text NOT NULL,
  title text NOT NULL,
  kind text NOT NULL,
  zone text NOT NULL,
  starts text NOT NULL,
  duration_s bigint NOT NULL,
  rule text NOT NULL,
  extra_dates text NOT NULL,
  excluded_dates text NOT NULL,
  overrides text NOT NULL,
  lanes text NOT NULL,
  demands text NOT NULL,
  settle_s bigint NOT NULL,
  clearing_s bigint NOT NULL,
  first_pair_twice bigint NOT NULL,
  yields_to_closure bigint NOT NULL,
  no_staff bigint NOT NULL,
  cancelled bigint NOT NULL,
  players bigint NOT NULL,
  note text NOT NULL,
  version bigint NOT NULL,
  PRIMARY KEY (centre_id, id)
);

CREATE TABLE jobs (
  centre_id text NOT NULL,
  id text NOT NULL,
  state text NOT NULL,
  day text NOT NULL,
  machine text,
  outing bigint NOT NULL,
  begins bigint NOT NULL,
  ends bigint NOT NULL,
  treatment text NOT NULL,
  pattern text,
  lanes text NOT NULL,
  steps text NOT NULL,
  needed_by text NOT NULL,
  reasons text NOT NULL,
  earliest bigint NOT NULL,
  latest bigint NOT NULL,
  slack_s bigint NOT NULL,
  late_s bigint NOT NULL,
  used text NOT NULL,
  plan_version bigint NOT NULL,
  person text,
  version bigint NOT NULL,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, machine) REFERENCES machines (centre_id, id),
  FOREIGN KEY (centre_id, pattern) REFERENCES patterns (centre_id, id),
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id)
);

CREATE TABLE runs (
  centre_id text NOT NULL,
  id text NOT NULL,
  job text,
  plan_version bigint NOT NULL,
  corrects text,
  machine text,
  person text,
  begins bigint NOT NULL,
  ends bigint NOT NULL,
  treatment text NOT NULL,
  pattern text,
  result text NOT NULL,
  used text NOT NULL,
  note text NOT NULL,
  recorded_at bigint NOT NULL,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, id) REFERENCES operations (centre_id, id),
  FOREIGN KEY (centre_id, corrects) REFERENCES runs (centre_id, id) DEFERRABLE INITIALLY DEFERRED,
  FOREIGN KEY (centre_id, machine) REFERENCES machines (centre_id, id),
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id),
  FOREIGN KEY (centre_id, pattern) REFERENCES patterns (centre_id, id)
);

CREATE TABLE run_lanes (
  centre_id text NOT NULL,
  run_id text NOT NULL,
  place bigint NOT NULL,
  lane bigint NOT NULL,
  begins bigint NOT NULL,
  ends bigint NOT NULL,
  PRIMARY KEY (centre_id, run_id, place),
  FOREIGN KEY (centre_id, run_id) REFERENCES runs (centre_id, id)
);

CREATE TABLE incidents (
  centre_id text NOT NULL,
  id text NOT NULL,
  incident text NOT NULL,
  happened_at bigint NOT NULL,
  lane bigint NOT NULL,
  machine text,
  person text,
  note text NOT NULL,
  corrects text,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, id) REFERENCES operations (centre_id, id),
  FOREIGN KEY (centre_id, corrects) REFERENCES incidents (centre_id, id) DEFERRABLE INITIALLY DEFERRED,
  FOREIGN KEY (centre_id, machine) REFERENCES machines (centre_id, id),
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id)
);

CREATE TABLE hand_overs (
  centre_id text NOT NULL,
  id text NOT NULL,
  day text NOT NULL,
  happened_at bigint NOT NULL,
  person text,
  note text NOT NULL,
  corrects text,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, id) REFERENCES operations (centre_id, id),
  FOREIGN KEY (centre_id, corrects) REFERENCES hand_overs (centre_id, id) DEFERRABLE INITIALLY DEFERRED,
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id)
);

CREATE TABLE level_readings (
  centre_id text NOT NULL,
  id text NOT NULL,
  person text,
  machine text,
  happened_at bigint NOT NULL,
  conditioner_ul text NOT NULL,
  cleaner_ul bigint NOT NULL,
  waste_ul bigint NOT NULL,
  lanes_left bigint NOT NULL,
  volts_mv bigint,
  corrects text,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, id) REFERENCES operations (centre_id, id),
  FOREIGN KEY (centre_id, corrects) REFERENCES level_readings (centre_id, id) DEFERRABLE INITIALLY DEFERRED,
  FOREIGN KEY (centre_id, machine) REFERENCES machines (centre_id, id),
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id)
);

CREATE INDEX operations_by_counter ON operations (centre_id, counter);
CREATE INDEX jobs_by_end ON jobs (centre_id, ends);
CREATE INDEX runs_by_end ON runs (centre_id, ends);
CREATE UNIQUE INDEX runs_by_corrected ON runs (centre_id, corrects);
CREATE UNIQUE INDEX incidents_by_corrected ON incidents (centre_id, corrects);
CREATE UNIQUE INDEX hand_overs_by_corrected ON hand_overs (centre_id, corrects);
CREATE UNIQUE INDEX level_readings_by_corrected ON level_readings (centre_id, corrects);
CREATE INDEX run_lanes_by_lane ON run_lanes (centre_id, lane, ends);
CREATE INDEX incidents_by_time ON incidents (centre_id, happened_at);
CREATE INDEX hand_overs_by_time ON hand_overs (centre_id, happened_at);
CREATE INDEX level_readings_by_time ON level_readings (centre_id, machine, happened_at);
