-- Service: items with their duties, what was done, counters that were read, packs, and the work that machines
-- have done. Meters are lanes, runs, seconds and microlitres. The work follows from the runs that stand, one row each, and
-- may be made again at any time. An incident may say what was done about an earlier one, or about a tape reading.

ALTER TABLE incidents ADD COLUMN answers text;

CREATE TABLE service_items (
  centre_id text NOT NULL,
  id text NOT NULL,
  machine text,
  kind text NOT NULL,
  name text NOT NULL,
  duties text NOT NULL,
  pack text,
  note text NOT NULL,
  retired bigint NOT NULL,
  version bigint NOT NULL,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, machine) REFERENCES machines (centre_id, id)
);

CREATE TABLE service_records (
  centre_id text NOT NULL,
  id text NOT NULL,
  happened_at bigint NOT NULL,
  person text,
  item text,
  duty text,
  meters text NOT NULL,
  result text NOT NULL,
  parts text NOT NULL,
  cost text NOT NULL,
  minutes bigint NOT NULL,
  finding text NOT NULL,
  note text NOT NULL,
  corrects text,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, id) REFERENCES operations (centre_id, id),
  FOREIGN KEY (centre_id, corrects) REFERENCES service_records (centre_id, id) DEFERRABLE INITIALLY DEFERRED,
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id),
  FOREIGN KEY (centre_id, item) REFERENCES service_items (centre_id, id)
);

CREATE TABLE meter_readings (
  centre_id text NOT NULL,
  id text NOT NULL,
  happened_at bigint NOT NULL,
  person text,
  machine text,
  meter text NOT NULL,
  shown bigint NOT NULL,
  replaced bigint NOT NULL,
  withdrawn bigint NOT NULL,
  note text NOT NULL,
  corrects text,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, id) REFERENCES operations (centre_id, id),
  FOREIGN KEY (centre_id, corrects) REFERENCES meter_readings (centre_id, id) DEFERRABLE INITIALLY DEFERRED,
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id),
  FOREIGN KEY (centre_id, machine) REFERENCES machines (centre_id, id)
);

CREATE TABLE pack_readings (
  centre_id text NOT NULL,
  id text NOT NULL,
  happened_at bigint NOT NULL,
  person text,
  pack text,
  deed text NOT NULL,
  volts_mv bigint,
  state text NOT NULL,
  spent bigint NOT NULL,
  withdrawn bigint NOT NULL,
  note text NOT NULL,
  corrects text,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, id) REFERENCES operations (centre_id, id),
  FOREIGN KEY (centre_id, corrects) REFERENCES pack_readings (centre_id, id) DEFERRABLE INITIALLY DEFERRED,
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id),
  FOREIGN KEY (centre_id, pack) REFERENCES service_items (centre_id, id)
);

ALTER TABLE level_readings ADD COLUMN emptied_ul bigint;

CREATE TABLE run_work (
  centre_id text NOT NULL,
  run_id text NOT NULL,
  machine text NOT NULL,
  ends bigint NOT NULL,
  lanes bigint NOT NULL,
  runs bigint NOT NULL,
  seconds bigint NOT NULL,
  volume_ul bigint NOT NULL,
  PRIMARY KEY (centre_id, run_id)
);

-- Files that belong to a service record or an incident; the same bytes are kept once, by their SHA-256.
CREATE TABLE attachments (
  centre_id text NOT NULL,
  id text NOT NULL,
  happened_at bigint NOT NULL,
  person text,
  record text NOT NULL,
  name text NOT NULL,
  type text NOT NULL,
  size bigint NOT NULL,
  sha256 text NOT NULL,
  withdrawn bigint NOT NULL,
  corrects text,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, id) REFERENCES operations (centre_id, id),
  FOREIGN KEY (centre_id, record) REFERENCES operations (centre_id, id),
  FOREIGN KEY (centre_id, corrects) REFERENCES attachments (centre_id, id) DEFERRABLE INITIALLY DEFERRED,
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id)
);

CREATE TABLE attachment_contents (
  centre_id text NOT NULL,
  sha256 text NOT NULL,
  content blob NOT NULL,
  PRIMARY KEY (centre_id, sha256)
);

CREATE UNIQUE INDEX attachments_by_corrected ON attachments (centre_id, corrects);
CREATE INDEX attachments_by_record ON attachments (centre_id, record);
CREATE INDEX attachments_by_time ON attachments (centre_id, happened_at);
CREATE UNIQUE INDEX service_records_by_corrected ON service_records (centre_id, corrects);
CREATE UNIQUE INDEX meter_readings_by_corrected ON meter_readings (centre_id, corrects);
CREATE UNIQUE INDEX pack_readings_by_corrected ON pack_readings (centre_id, corrects);
CREATE INDEX pack_readings_by_time ON pack_readings (centre_id, happened_at);
CREATE INDEX service_records_by_time ON service_records (centre_id, happened_at);
CREATE INDEX service_records_by_duty ON service_records (centre_id, duty, happened_at);
CREATE INDEX meter_readings_by_time ON meter_readings (centre_id, happened_at);
CREATE INDEX run_work_by_machine ON run_work (centre_id, machine, ends, lanes, runs, seconds, volume_ul);
