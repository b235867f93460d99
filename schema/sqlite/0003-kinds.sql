-- Generated from the declarations of kinds by "npm run generate".

-- Kinds, and fields of kinds, that came after the first schema.

ALTER TABLE "identity" ADD COLUMN "lines" TEXT;

CREATE TABLE "feature" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "what" TEXT,
  "form" TEXT,
  "priorReading" TEXT,
  "zone" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "design" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "photograph" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "of" INTEGER,
  "view" TEXT,
  "light" TEXT,
  "photographer" TEXT,
  "taken" TEXT,
  "scale" REAL,
  "rights" TEXT,
  "credit" TEXT,
  "permission" TEXT,
  "contentHash" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "enquiry" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "request" TEXT,
  "to" INTEGER,
  "about" INTEGER,
  "sent" TEXT,
  "answered" TEXT,
  "state" TEXT,
  "fee" TEXT,
  "outcome" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "statement" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "of" INTEGER,
  "contentHash" TEXT,
  "changeSet" INTEGER,
  "conventions" TEXT,
  "labels" TEXT,
  "sameAs" TEXT,
  "notes" TEXT,
  "columns" TEXT,
  "notebook" TEXT,
  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;

CREATE TABLE "comparison" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "picture" INTEGER,
  "against" INTEGER,
  "through" INTEGER,
  "photograph" INTEGER,
  "againstPhotograph" INTEGER,
  "points" TEXT,
  "handedness" TEXT,
  "size" TEXT,
  "againstSize" TEXT,
  "ratio" REAL,
  "conclusion" TEXT,
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

CREATE TABLE "follows" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "record" INTEGER,
  "design" INTEGER,
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

CREATE TABLE "custody" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "thing" INTEGER,
  "holder" INTEGER,
  "acquired" TEXT,
  "parted" TEXT,
  "number" TEXT,
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

CREATE TABLE "region" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "picture" INTEGER,
  "photograph" INTEGER,
  "rectangles" TEXT,
  "outline" TEXT,
  "contentHash" TEXT,
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

CREATE TABLE "mention" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "record" INTEGER,
  "reference" INTEGER,
  "locator" TEXT,
  "illustrated" INTEGER,
  "description" TEXT,
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

CREATE TABLE "examination" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "sought" INTEGER,
  "target" INTEGER,
  "exemplar" INTEGER,
  "result" TEXT,
  "coverage" TEXT,
  "source" TEXT,
  "searchWords" TEXT,
  "lookedBy" TEXT,
  "lookedOn" TEXT,
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

CREATE TABLE "opinion" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
  "agent" INTEGER,
  "claim" INTEGER,
  "verdict" TEXT,
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
