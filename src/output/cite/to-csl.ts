import type { CitableAgent, CitableEdition } from './citable-edition.ts';
import { cslDate } from './csl-date.ts';
import type { CslItem, CslName } from './csl-item.ts';
import { cslName } from './csl-name.ts';
import { editionNumber } from './edition-number.ts';
import { relatorTerm } from './relator-term.ts';

type NameVariable = 'author' | 'editor' | 'compiler' | 'translator' | 'illustrator' | 'contributor';

const nameVariables: Readonly<Record<string, NameVariable>> = {
  aut: 'author',
  cre: 'author',
  edt: 'editor',
  com: 'compiler',
  trl: 'translator',
  ill: 'illustrator',
  aui: 'contributor',
  aft: 'contributor',
  cmm: 'contributor',
  wac: 'contributor',
  ctb: 'contributor',
};

/** On a sheet of its own the maker of the print is its author. */
const printmakers = new Set(['egr', 'etr', 'ltg', 'mte', 'wde', 'wdc', 'prm', 'art']);

/** Schemes whose numbers have a variable of their own; other numbers go to the note. */
const numberVariables = ['DOI', 'ISBN', 'ISSN'] as const;

/**
 * An edition as a CSL-JSON item (schema 1.0.2). CSL has no variable for engravers, printers and their like: they are
 * named with their role in `note`. `language` is that of the words in dates which CSL can only hold as text.
 */
export function toCsl(edition: CitableEdition, language = 'en'): CslItem {
  const names = namesOf(edition);
  return compact({
    id: edition.id,
    type: edition.singleSheet ? 'graphic' : 'book',
    title: titleOf(edition),
    ...names,
    edition: editionOf(edition.editionStatement),
    volume: volumeOf(edition.number),
    'number-of-volumes': volumeCount(edition.extent),
    publisher: joined(edition.imprints?.map(imprint => imprint.publisher)),
    'publisher-place': joined(edition.imprints?.map(imprint => imprint.place)),
    issued: cslDate(edition.date, language),
    'original-title': edition.original?.title,
    'original-date': cslDate(edition.original?.date, language),
    'original-publisher': edition.original?.publisher,
    'original-publisher-place': edition.original?.place,
    'collection-title': joined(edition.series),
    language: edition.languages?.[0],
    ...numbersOf(edition),
    URL: edition.urls?.[0],
    note: noteOf(edition),
    custom: compact({
      id: edition.id,
      edtf: edition.date?.edtf,
      dateAsWritten: edition.date?.asWritten,
      responsibility: edition.responsibility,
      editionStatement: edition.editionStatement,
      extent: edition.extent,
      format: edition.format,
    }),
  });
}

/** An object without the keys whose value is absent, empty text or an empty list. */
function compact<T extends object>(value: { [K in keyof T]: T[K] | undefined }): T {
  const kept = Object.entries(value).filter(
    ([, v]) => v !== undefined && v !== '' && !(Array.isArray(v) && v.length === 0),
  );
  return Object.fromEntries(kept) as T;
}

function titleOf(edition: CitableEdition): string {
  const number = volumeOf(edition.number) === undefined ? edition.number : undefined;
  const parts = [edition.title, number, ...(edition.partTitles ?? [])].filter(
    part => part !== undefined && part !== '',
  );
  return parts.join('. ').replace(/([.!?])\. /gu, '$1 ');
}

function namesOf(edition: CitableEdition): Partial<Record<NameVariable, CslName[]>> {
  const lists: Partial<Record<NameVariable, CslName[]>> = {};
  for (const agent of edition.agents ?? []) {
    const variable = variableOf(agent, edition);
    if (variable === undefined) continue;
    lists[variable] ??= [];
    const list = lists[variable];
    const name = cslName(agent);
    if (!list.some(other => JSON.stringify(other) === JSON.stringify(name))) list.push(name);
  }
  return lists;
}

function variableOf(agent: CitableAgent, edition: CitableEdition): NameVariable | undefined {
  if (edition.singleSheet === true && printmakers.has(agent.role)) return 'author';
  return nameVariables[agent.role];
}

function editionOf(statement: string | undefined): number | string | undefined {
  return statement === undefined ? undefined : (editionNumber(statement) ?? statement);
}

/** `Vol. 3`, `Bd. 3`, `3`: a number of its own. Anything wordier belongs to the title. */
function volumeOf(number: string | undefined): string | undefined {
  return /^(?:v|vol|volume|bd|band|t|tom|tome|tomo|deel|d)?\.?\s*(\d{1,4}|[IVXLC]{1,7})\.?$/iu.exec(
    number?.trim() ?? '',
  )?.[1];
}

/** Volumes of an extent such as `3 v.` or `2 Bde.`; undefined for one or none. */
function volumeCount(extent: string | undefined): number | undefined {
  const count =
    /(?:^|[\s([])(\d{1,3})\s*(?:v|vols?|volumes?|bde|bände|t|tomes?|tomi|tomos?|voll|vol[uú]menes|dln|delen)\b/iu;
  const volumes = Number(count.exec(extent ?? '')?.[1] ?? 0);
  return volumes > 1 ? volumes : undefined;
}

/** Distinct texts in order, parted by semicolons: commas are parts of names. */
function joined(texts: readonly (string | undefined)[] | undefined): string | undefined {
  const distinct = new Set((texts ?? []).map(text => text?.trim()).filter(text => text !== undefined && text !== ''));
  return distinct.size === 0 ? undefined : [...distinct].join('; ');
}

function numbersOf(edition: CitableEdition): Partial<Record<(typeof numberVariables)[number], string>> {
  const numbers: Partial<Record<(typeof numberVariables)[number], string>> = {};
  for (const variable of numberVariables) {
    const number = edition.identifiers?.find(({ scheme }) => scheme.toUpperCase() === variable);
    if (number !== undefined) numbers[variable] = number.value;
  }
  return numbers;
}

function noteOf(edition: CitableEdition): string | undefined {
  const byRole = new Map<string, string[]>();
  for (const agent of edition.agents ?? []) {
    if (variableOf(agent, edition) !== undefined) continue;
    const term = relatorTerm(agent.role);
    byRole.set(term, [...(byRole.get(term) ?? []), agent.sortName ?? agent.name]);
  }
  const roles = [...byRole].map(([term, names]) => `${term}: ${[...new Set(names)].join('; ')}.`);
  const numbers = (edition.identifiers ?? [])
    .filter(({ scheme }) => !numberVariables.some(variable => variable === scheme.toUpperCase()))
    .map(({ scheme, value }) => `${scheme} ${value}.`);
  const note = [...roles, ...numbers].join(' ').replace(/\.\.(?= |$)/gu, '.');
  return note === '' ? undefined : note;
}
