import { foldTokens } from '../../domain/text/fold.ts';
import type { CitableAgent, CitableEdition } from './citable.ts';
import { compact } from './compact.ts';
import { cslDate } from './csl-date.ts';
import type { CslItem, CslName } from './csl-item.ts';
import { distinctNames, filedAs } from './csl-name.ts';
import { editionNumber } from './edition-number.ts';
import { isPrintmaker } from './printmaker.ts';
import { doubtNote, joinedNote, rolesNote } from './roles-note.ts';
import { volumeOf } from './volume-number.ts';

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

/** Schemes whose numbers have a variable of their own; other numbers go to the note. */
const numberVariables = ['DOI', 'ISBN', 'ISSN'] as const;

/**
 * An edition as a CSL-JSON item (schema 1.0.2). CSL has no variable for engravers, printers and their like: they are
 * named with their role in `note`. `language` is that of the words in dates which CSL can only hold as text.
 */
export function editionToCsl(edition: CitableEdition, language = 'en'): CslItem {
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
      filedAs: filedAs(edition.agents ?? []),
    }),
  });
}

function titleOf(edition: CitableEdition): string {
  const { title, number, partTitles = [] } = edition;
  const told = number === undefined || volumeOf(number) !== undefined || holds(title, number);
  const parts = [title, ...(told ? [] : [number]), ...partTitles].filter((part, i) => i === 0 || part !== '');
  return parts.reduce((before, part) => `${before}${/[.!?]$/.test(before) ? ' ' : '. '}${part}`);
}

/** Titles taken from catalogues may have the number in them already. */
function holds(title: string, number: string): boolean {
  return ` ${foldTokens(title).join(' ')} `.includes(` ${foldTokens(number).join(' ')} `);
}

function namesOf(edition: CitableEdition): Partial<Record<NameVariable, readonly CslName[]>> {
  const lists: Partial<Record<NameVariable, CitableAgent[]>> = {};
  for (const agent of edition.agents ?? []) {
    const variable = variableOf(agent, edition);
    if (variable !== undefined) lists[variable] = [...(lists[variable] ?? []), agent];
  }
  return Object.fromEntries(Object.entries(lists).map(([variable, agents]) => [variable, distinctNames(agents)]));
}

function variableOf(agent: CitableAgent, edition: CitableEdition): NameVariable | undefined {
  if (edition.singleSheet === true && isPrintmaker(agent)) return 'author';
  return nameVariables[agent.role];
}

function editionOf(statement: string | undefined): number | string | undefined {
  return statement === undefined ? undefined : (editionNumber(statement) ?? statement);
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
  const agents = edition.agents ?? [];
  const named = agents.filter(agent => variableOf(agent, edition) !== undefined);
  const numbers = (edition.identifiers ?? [])
    .filter(({ scheme }) => !numberVariables.some(variable => variable === scheme.toUpperCase()))
    .map(({ scheme, value }) => `${scheme} ${value}.`);
  return joinedNote([...rolesNote(agents.filter(agent => !named.includes(agent))), ...doubtNote(named), ...numbers]);
}
