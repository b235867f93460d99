-- Derived: dates that datings are found by as they are written, since their days rest on how approximate dates are read: that is
-- known when it is asked. There are few that differ.
CREATE TABLE dated_date (
  number INTEGER PRIMARY KEY,
  text TEXT NOT NULL UNIQUE
);

-- Number of such a date, 0 for none. Where there is one, spread is -1, and first and last are 0.
ALTER TABLE dated ADD COLUMN date INTEGER NOT NULL DEFAULT 0;
CREATE INDEX dated_by_date ON dated (date, kind, record) WHERE date > 0;
