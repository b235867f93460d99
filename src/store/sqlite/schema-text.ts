import { claimStepNames, claimSteps } from '../../domain/descent/walk-steps.ts';
import type { Kind } from '../../domain/model/declaration.ts';
import {
  claimKindNames,
  claimKinds,
  isClaimKind,
  type KindName,
  recordKindNames,
  recordKinds,
} from '../../domain/model/kinds.ts';
import { type FieldShape, rowFields } from '../../domain/model/row-fields.ts';

/** Number of the newest migration; the file of it is `schema/sqlite/0006-groups.sql`. */
export const schemaNumber = 6;

/** Marks a file as a store of this program, in the header of the database file. */
export const applicationId = 0x504c5354;

/** Every kind, those that stores had first before those that came later: the place of a kind is its number in a store, for ever. */
export const kindNames: readonly KindName[] = [...recordKindNames, ...claimKindNames].toSorted(
  (one, other) => kindSince(one) - kindSince(other),
);

/** Number of the first schema that has a kind. */
export function kindSince(kind: KindName): number {
  const { since = 1 }: Kind = { ...recordKinds, ...claimKinds }[kind];
  return since;
}

/** Table of a kind: `Edition` is `edition`, `EditionDescent` is `edition_descent`. */
export function tableOf(kind: KindName): string {
  return kind.replace(/(?<=[a-z])[A-Z]/g, letter => `_${letter}`).toLowerCase();
}

/** Word by which the records of a kind (place in the list) are found together; no folded token has such a sign. */
export function kindWord(kind: number): string {
  return `_${kind}`;
}

const types: Readonly<Record<FieldShape, string>> = {
  text: 'TEXT',
  integer: 'INTEGER',
  number: 'REAL',
  flag: 'INTEGER',
  link: 'INTEGER',
  json: 'TEXT',
};

/** The first migration, whole: what is common is written here, a table a kind follows from the declarations. */
export function schemaText(): string {
  return `${heading}\n${tablesOf(1)}\n${common}\n${walkIndexes()}`;
}

/** A later migration that brings kinds, and fields of kinds that were there before. */
export function addedText(number: number): string {
  const columns = kindNames.flatMap(kind =>
    rowFields(kind)
      .filter(({ since }) => since === number)
      .map(({ name, shape }) => `ALTER TABLE "${tableOf(kind)}" ADD COLUMN "${name}" ${types[shape]};\n`),
  );
  const groups = number < groupsSince ? '' : groupIndexes(kind => kindSince(kind) === number);
  return `${addedHeading}\n${columns.join('')}\n${tablesOf(number)}${groups}`;
}

/** Number of the migration by which claims are found by the group of alternatives that they stand in; few do. */
const groupsSince = 6;

/** That migration, for the kinds that there were before it. */
export function groupsText(): string {
  return `-- Generated from the declarations of kinds by "npm run generate".

-- Claims by the group of alternatives that they stand in now.
${groupIndexes(kind => kindSince(kind) < groupsSince)}`;
}

function groupIndexes(isAmong: (kind: KindName) => boolean): string {
  const tables = kindNames.filter(kind => isClaimKind(kind) && isAmong(kind)).map(tableOf);
  return tables
    .map(
      table =>
        `CREATE INDEX ${table}_in_group ON "${table}" ("alternativeTo") WHERE "alternativeTo" IS NOT NULL AND _until IS NULL;\n`,
    )
    .join('');
}

function tablesOf(number: number): string {
  return kindNames
    .filter(kind => kindSince(kind) === number)
    .map(tableText)
    .join('\n');
}

function tableText(kind: KindName): string {
  const fields = rowFields(kind).filter(({ since }) => since === undefined);
  const columns = fields.map(({ name, shape }) => `  "${name}" ${types[shape]},\n`);
  return `CREATE TABLE "${tableOf(kind)}" (
  _key INTEGER NOT NULL,
  _since INTEGER NOT NULL,
  _until INTEGER,
${columns.join('')}  PRIMARY KEY (_key, _since)
) WITHOUT ROWID;
`;
}

/** All versions, so that a walk as of before takes no longer than one now. */
function walkIndexes(): string {
  const indexes = claimStepNames.flatMap(kind => {
    const { copy, source } = claimSteps[kind];
    return [walkIndex(kind, copy, source), walkIndex(kind, source, copy)];
  });
  return `-- What walks cross, without a look at the rows.
${indexes.join('\n')}
CREATE INDEX detail_by_of ON detail ("of", _until);
`;
}

function walkIndex(kind: KindName, from: string, to: string): string {
  const table = tableOf(kind);
  return `CREATE INDEX ${table}_by_${from} ON ${table} ("${from}", "${to}", standing, stance, certainty, _until);`;
}

const heading = `-- Generated from the declarations of kinds by "npm run generate". A store is one SQLite file.

-- Versions of records and claims: valid from the change set _since until the one before _until (null: now).
`;

const addedHeading = `-- Generated from the declarations of kinds by "npm run generate".

-- Kinds, and fields of kinds, that came after the first schema.
`;

const common = `-- One row a change set: who wrote, when, why. "batch" names a run of an intake.
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
`;
