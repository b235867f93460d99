-- Generated from the declarations of kinds by "npm run generate". A store is one SQLite file.

-- Versions of records and claims: valid from the change set _since until the one before _until (null: now).

CREATE TABLE "agent" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "form" TEXT,
  "sortName" TEXT,
  "dates" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "place" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "latitude" REAL,
  "longitude" REAL,
  "within" INTEGER,
  "country" TEXT,
  "harbour" INTEGER,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "workshop" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "trade" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "work" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "form" TEXT,
  "languages" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "edition" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "work" INTEGER,
  "title" TEXT,
  "responsibility" TEXT,
  "statement" TEXT,
  "imprint" TEXT,
  "extent" TEXT,
  "illustration" TEXT,
  "illustrated" INTEGER,
  "format" TEXT,
  "series" TEXT,
  "number" TEXT,
  "languages" TEXT,
  "identifiers" TEXT,
  "digitalCopies" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "exemplar" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "edition" INTEGER,
  "shelfmark" TEXT,
  "wants" TEXT,
  "access" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "plate" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "form" TEXT,
  "caption" TEXT,
  "lettering" TEXT,
  "letteredNames" TEXT,
  "technique" TEXT,
  "techniqueUri" TEXT,
  "size" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "matrix" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "form" TEXT,
  "survival" TEXT,
  "size" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "state" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "matrix" INTEGER,
  "order" INTEGER,
  "lettering" TEXT,
  "changes" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "artwork" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "medium" TEXT,
  "size" TEXT,
  "survival" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "piece" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "form" TEXT,
  "material" TEXT,
  "marks" TEXT,
  "size" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "motif" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "piece" INTEGER,
  "caption" TEXT,
  "side" TEXT,
  "zone" TEXT,
  "row" INTEGER,
  "column" INTEGER,
  "order" INTEGER,
  "technique" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "detail" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "of" INTEGER,
  "region" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "reference" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "csl" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "convention" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "key" TEXT,
  "value" TEXT,
  "unit" TEXT,
  "source" TEXT,
  "version" INTEGER,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "alternatives" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "open" INTEGER,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "imprint" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "edition" INTEGER,
  "place" INTEGER,
  "agent" INTEGER,
  "role" TEXT,
  "order" INTEGER,
  "asWritten" TEXT,
  "fictitious" INTEGER,
  "rule" TEXT,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "dating" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "of" INTEGER,
  "event" TEXT,
  "date" TEXT,
  "asWritten" TEXT,
  "calendar" TEXT,
  "rule" TEXT,
  "basis" TEXT,
  "flags" TEXT,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "appearance" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "plate" INTEGER,
  "edition" INTEGER,
  "state" INTEGER,
  "presence" TEXT,
  "volume" TEXT,
  "page" TEXT,
  "number" TEXT,
  "cover" INTEGER,
  "colouring" TEXT,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "copying" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "copy" INTEGER,
  "source" INTEGER,
  "through" INTEGER,
  "manner" TEXT,
  "handedness" TEXT,
  "remove" TEXT,
  "fromProof" INTEGER,
  "copiedFrom" TEXT,
  "copiedTo" TEXT,
  "alterations" TEXT,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "edition_descent" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "later" INTEGER,
  "earlier" INTEGER,
  "text" TEXT,
  "leave" TEXT,
  "surfaces" TEXT,
  "asWritten" TEXT,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "part_of" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "part" INTEGER,
  "whole" INTEGER,
  "number" TEXT,
  "asWritten" TEXT,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "printed_from" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "picture" INTEGER,
  "matrix" INTEGER,
  "state" INTEGER,
  "manner" TEXT,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "casting" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "cast" INTEGER,
  "parent" INTEGER,
  "manner" TEXT,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "attribution" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "record" INTEGER,
  "agent" INTEGER,
  "role" TEXT,
  "asWritten" TEXT,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "made_at" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "record" INTEGER,
  "place" INTEGER,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "stay" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "who" INTEGER,
  "where" INTEGER,
  "from" TEXT,
  "to" TEXT,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "depiction" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "picture" INTEGER,
  "subject" INTEGER,
  "iconclass" TEXT,
  "named" TEXT,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "access" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "who" INTEGER,
  "what" INTEGER,
  "at" INTEGER,
  "manner" TEXT,
  "when" TEXT,
  "described" TEXT,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "sequence" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "earlier" INTEGER,
  "later" INTEGER,
  "earlierEvent" TEXT,
  "laterEvent" TEXT,
  "atLeast" INTEGER,
  "atMost" INTEGER,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "identity" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "one" INTEGER,
  "other" INTEGER,
  "verdict" TEXT,
  "level" TEXT,
  "points" INTEGER,
  "rule" TEXT,
  "standing" TEXT,
  "withdrawnBecause" TEXT,
  "supersededBy" TEXT,
  "stance" TEXT,
  "certainty" TEXT,
  "alternativeTo" TEXT,
  "evidence" TEXT,
  "by" TEXT,
  "on" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

-- One row a change set: who wrote, when, why. "batch" names a run of an intake.
CREATE TABLE change_set (
  number INTEGER PRIMARY KEY,
  moment TEXT NOT NULL,
  who TEXT NOT NULL,
  why TEXT NOT NULL,
  batch TEXT
);

-- Every record and claim once: its id, its kind (place in the list of kinds), and for records their sort key now.
CREATE TABLE node (
  key INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  kind INTEGER NOT NULL,
  sort TEXT
);
CREATE INDEX node_in_order ON node (kind, sort, id) WHERE sort IS NOT NULL;

-- Every place in a row that holds the id of another: which rows (node) hold target in the role or field named by code.
CREATE TABLE link (
  target INTEGER NOT NULL,
  code INTEGER NOT NULL,
  node INTEGER NOT NULL,
  since INTEGER NOT NULL,
  until INTEGER,
  PRIMARY KEY (target, code, node, since)
) WITHOUT ROWID;

-- Where a record was taken from; digest of what was taken.
CREATE TABLE origin (
  key TEXT NOT NULL,
  source TEXT NOT NULL,
  node INTEGER NOT NULL,
  digest TEXT NOT NULL,
  PRIMARY KEY (key, source)
) WITHOUT ROWID;
CREATE INDEX origin_of_node ON origin (node);

-- Links that wait for a record that has not come.
CREATE TABLE awaited (
  number INTEGER PRIMARY KEY,
  key TEXT NOT NULL,
  source TEXT NOT NULL,
  claim TEXT NOT NULL,
  role TEXT NOT NULL
);
CREATE INDEX awaited_by_origin ON awaited (key, source);

CREATE TABLE checkpoint (
  intake TEXT PRIMARY KEY,
  records INTEGER NOT NULL,
  report TEXT NOT NULL
) WITHOUT ROWID;

-- Derived: places of issue of editions, as one word.
CREATE TABLE profile (
  number INTEGER PRIMARY KEY,
  name TEXT NOT NULL UNIQUE
);

-- Derived: what the first and last recorded day of an edition do not say, as JSON.
CREATE TABLE window_detail (
  number INTEGER PRIMARY KEY,
  text TEXT NOT NULL UNIQUE
);

-- Derived: what filters ask of editions and their works, as JSON.
CREATE TABLE window_traits (
  number INTEGER PRIMARY KEY,
  text TEXT NOT NULL UNIQUE
);

-- Derived: recorded days of publication of editions, for questions about reach. Open ends are -1000000000 and 1000000000,
-- the class is a place in its list, detail and traits 0 are none. The id is there to be listed in its order.
CREATE TABLE edition_window (
  edition INTEGER PRIMARY KEY,
  id TEXT NOT NULL,
  profile INTEGER NOT NULL,
  class INTEGER NOT NULL,
  detail INTEGER NOT NULL,
  first INTEGER NOT NULL,
  last INTEGER NOT NULL,
  traits INTEGER NOT NULL
);
CREATE INDEX edition_window_in_order ON edition_window (profile, class, detail, first, last, id, traits);

-- Derived: how many editions have each window and traits. Each row adds to those before it what later changes made of the counts:
-- all profiles, all classes, and so on, all counts, as 32-bit numbers, low byte first. Rows are merged, never changed.
CREATE TABLE window_tally (
  number INTEGER PRIMARY KEY,
  numbers BLOB NOT NULL
);

-- Derived: words that records are found by now, folded before they come here, and one word for the kind; rowid is the
-- key of the node. Beginnings of up to eight characters are kept as words are: what a longer one finds is gathered before the
-- first is given.
CREATE VIRTUAL TABLE search USING fts5 (tokens, content = '', contentless_delete = 1, detail = none, prefix = '1 2 3 4 5 6 7 8', tokenize = "ascii tokenchars '_'");
-- Words of a batch are gathered in memory, and merged more seldom than is usual: takings are large.
INSERT INTO search (search, rank) VALUES ('hashsize', 67108864);
INSERT INTO search (search, rank) VALUES ('automerge', 16);

-- Derived: days that the datings that count allow, for search. Open ends are -1000000000 and 1000000000; kind is that of the
-- record; spread is the number of binary digits of last - first, so that those which meet some days begin near them.
CREATE TABLE dated (
  dating INTEGER PRIMARY KEY,
  record INTEGER NOT NULL,
  kind INTEGER NOT NULL,
  spread INTEGER NOT NULL,
  first INTEGER NOT NULL,
  last INTEGER NOT NULL
);
CREATE INDEX dated_in_order ON dated (kind, spread, first, last, record);

-- Derived: which pictures show what, for filters.
CREATE INDEX depiction_by_iconclass ON depiction (iconclass) WHERE _until IS NULL;

-- Derived: how many records or claims of each kind there are now.
CREATE TABLE tally (
  kind INTEGER PRIMARY KEY,
  rows INTEGER NOT NULL
);

-- Versions of what is derived.
CREATE TABLE derived (
  name TEXT PRIMARY KEY,
  version INTEGER NOT NULL
) WITHOUT ROWID;

-- What walks cross, without a look at the rows.
CREATE INDEX copying_by_copy ON copying ("copy", "source", standing, stance, certainty, _until);
CREATE INDEX copying_by_source ON copying ("source", "copy", standing, stance, certainty, _until);
CREATE INDEX printed_from_by_picture ON printed_from ("picture", "matrix", standing, stance, certainty, _until);
CREATE INDEX printed_from_by_matrix ON printed_from ("matrix", "picture", standing, stance, certainty, _until);
CREATE INDEX casting_by_cast ON casting ("cast", "parent", standing, stance, certainty, _until);
CREATE INDEX casting_by_parent ON casting ("parent", "cast", standing, stance, certainty, _until);
CREATE INDEX edition_descent_by_later ON edition_descent ("later", "earlier", standing, stance, certainty, _until);
CREATE INDEX edition_descent_by_earlier ON edition_descent ("earlier", "later", standing, stance, certainty, _until);
CREATE INDEX detail_by_of ON detail ("of", _until);
