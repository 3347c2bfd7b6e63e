-- Tape readings, inspections, the versions of patterns, and what belongs to them in older tables. What every pattern says when this
-- is applied becomes its first version, as of its last change. Film in thousandths of a unit.

ALTER TABLE machines ADD COLUMN carry_length_um bigint NOT NULL DEFAULT 0;

ALTER TABLE centres ADD COLUMN reading_limits text NOT NULL DEFAULT '{"lowest_milli_units":null,"largest_error_milli_units":null,"least_track_permille":null,"most_track_permille":null}';

ALTER TABLE patterns ADD COLUMN edition bigint NOT NULL DEFAULT 1;

ALTER TABLE runs ADD COLUMN pattern_version bigint NOT NULL DEFAULT 0;

ALTER TABLE level_readings ADD COLUMN poured text;

CREATE TABLE pattern_versions (
  centre_id text NOT NULL,
  pattern text NOT NULL,
  edition bigint NOT NULL,
  name text NOT NULL,
  strokes text NOT NULL,
  end_um bigint NOT NULL,
  clean_whole_lane bigint NOT NULL,
  note text NOT NULL,
  since bigint NOT NULL,
  person text,
  PRIMARY KEY (centre_id, pattern, edition)
);

INSERT INTO pattern_versions (centre_id, pattern, edition, name, strokes, end_um, clean_whole_lane, note, since, person)
  SELECT p.centre_id, p.id, 1, p.name, p.strokes, p.end_um, p.clean_whole_lane, p.note,
    COALESCE((SELECT MAX(o.happened_at) FROM operations o WHERE o.centre_id = p.centre_id AND o.counter = p.version), 0),
    (SELECT MAX(o.person) FROM operations o WHERE o.centre_id = p.centre_id AND o.counter = p.version)
  FROM patterns p;

CREATE TABLE tape_readings (
  centre_id text NOT NULL,
  id text NOT NULL,
  happened_at bigint NOT NULL,
  person text,
  machine text,
  pattern text,
  pattern_version bigint NOT NULL,
  lane bigint NOT NULL,
  lane_of_run bigint NOT NULL,
  distance_um bigint NOT NULL,
  milli_units text NOT NULL,
  note text NOT NULL,
  corrects text,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, id) REFERENCES operations (centre_id, id),
  FOREIGN KEY (centre_id, corrects) REFERENCES tape_readings (centre_id, id) DEFERRABLE INITIALLY DEFERRED,
  FOREIGN KEY (centre_id, machine) REFERENCES machines (centre_id, id),
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id),
  FOREIGN KEY (centre_id, pattern) REFERENCES patterns (centre_id, id)
);

CREATE TABLE inspections (
  centre_id text NOT NULL,
  id text NOT NULL,
  happened_at bigint NOT NULL,
  person text,
  lane bigint NOT NULL,
  geometry text NOT NULL,
  note text NOT NULL,
  corrects text,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, id) REFERENCES operations (centre_id, id),
  FOREIGN KEY (centre_id, corrects) REFERENCES inspections (centre_id, id) DEFERRABLE INITIALLY DEFERRED,
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id)
);

CREATE UNIQUE INDEX tape_readings_by_corrected ON tape_readings (centre_id, corrects);
CREATE UNIQUE INDEX inspections_by_corrected ON inspections (centre_id, corrects);
CREATE INDEX tape_readings_by_time ON tape_readings (centre_id, happened_at);
CREATE INDEX inspections_by_time ON inspections (centre_id, happened_at);
