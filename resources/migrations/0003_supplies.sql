-- Supplies, suppliers, price lists and orders; the stock ledger, counts of stock, the balances at the end of each month, and the
-- forecast of use of each day, kept to be scored. Amounts
-- are in the base unit of their supply (microlitres, millimetres, pieces); months are UTC, as 202611. Only inside places have
-- balances, with an empty text where an entry names no machine; they follow from the movements and may be made again at any time.

UPDATE centres SET settings = '{"currency":"EUR",' || substr(settings, 2);

CREATE TABLE supplies (
  centre_id text NOT NULL,
  id text NOT NULL,
  name text NOT NULL,
  kind text NOT NULL,
  water_parts bigint NOT NULL,
  basis text NOT NULL,
  usual_use bigint NOT NULL,
  container bigint NOT NULL,
  rules text NOT NULL,
  retired bigint NOT NULL,
  note text NOT NULL,
  version bigint NOT NULL,
  PRIMARY KEY (centre_id, id)
);

CREATE TABLE suppliers (
  centre_id text NOT NULL,
  id text NOT NULL,
  name text NOT NULL,
  address text NOT NULL,
  freight text NOT NULL,
  free_freight_from text,
  minimum_order text NOT NULL,
  order_weekdays bigint NOT NULL,
  usual_lead_days bigint NOT NULL,
  retired bigint NOT NULL,
  note text NOT NULL,
  version bigint NOT NULL,
  PRIMARY KEY (centre_id, id)
);

CREATE TABLE offers (
  centre_id text NOT NULL,
  id text NOT NULL,
  supplier text,
  supply text,
  article text NOT NULL,
  pack bigint NOT NULL,
  prices text NOT NULL,
  retired bigint NOT NULL,
  version bigint NOT NULL,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, supplier) REFERENCES suppliers (centre_id, id),
  FOREIGN KEY (centre_id, supply) REFERENCES supplies (centre_id, id)
);

CREATE TABLE orders (
  centre_id text NOT NULL,
  id text NOT NULL,
  supplier text,
  number text NOT NULL,
  state text NOT NULL,
  person text,
  placed_on text,
  lines text NOT NULL,
  freight text NOT NULL,
  note text NOT NULL,
  version bigint NOT NULL,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, supplier) REFERENCES suppliers (centre_id, id),
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id)
);

CREATE TABLE movements (
  centre_id text NOT NULL,
  id text NOT NULL,
  kind text NOT NULL,
  happened_at bigint NOT NULL,
  person text,
  reason text NOT NULL,
  source text NOT NULL,
  source_id text NOT NULL,
  corrects text,
  flagged bigint NOT NULL,
  recorded_at bigint NOT NULL,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, id) REFERENCES operations (centre_id, id),
  FOREIGN KEY (centre_id, corrects) REFERENCES movements (centre_id, id) DEFERRABLE INITIALLY DEFERRED,
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id)
);

CREATE TABLE movement_entries (
  centre_id text NOT NULL,
  movement_id text NOT NULL,
  line bigint NOT NULL,
  month bigint NOT NULL,
  supply text NOT NULL,
  place text NOT NULL,
  machine text,
  slot bigint NOT NULL,
  container text NOT NULL,
  lot text NOT NULL,
  amount bigint NOT NULL,
  PRIMARY KEY (centre_id, movement_id, line),
  FOREIGN KEY (centre_id, movement_id) REFERENCES movements (centre_id, id),
  FOREIGN KEY (centre_id, machine) REFERENCES machines (centre_id, id)
);

CREATE TABLE stock_counts (
  centre_id text NOT NULL,
  id text NOT NULL,
  happened_at bigint NOT NULL,
  person text,
  lines text NOT NULL,
  note text NOT NULL,
  corrects text,
  PRIMARY KEY (centre_id, id),
  FOREIGN KEY (centre_id, id) REFERENCES operations (centre_id, id),
  FOREIGN KEY (centre_id, corrects) REFERENCES stock_counts (centre_id, id) DEFERRABLE INITIALLY DEFERRED,
  FOREIGN KEY (centre_id, person) REFERENCES people (centre_id, id)
);

CREATE TABLE closing_balances (
  centre_id text NOT NULL,
  month bigint NOT NULL,
  supply text NOT NULL,
  place text NOT NULL,
  machine text NOT NULL,
  slot bigint NOT NULL,
  container text NOT NULL,
  lot text NOT NULL,
  amount bigint NOT NULL,
  PRIMARY KEY (centre_id, month, supply, place, machine, slot, container, lot)
);

CREATE TABLE kept_forecasts (
  centre_id text NOT NULL,
  day text NOT NULL,
  supplies text NOT NULL,
  PRIMARY KEY (centre_id, day)
);

CREATE UNIQUE INDEX movements_by_corrected ON movements (centre_id, corrects);
CREATE UNIQUE INDEX stock_counts_by_corrected ON stock_counts (centre_id, corrects);
CREATE INDEX movements_by_time ON movements (centre_id, happened_at);
CREATE INDEX movements_by_source ON movements (centre_id, source_id);
CREATE INDEX stock_counts_by_time ON stock_counts (centre_id, happened_at);
