import type { CitableAgent, CitableObject } from './citable.ts';
import { compact } from './compact.ts';
import { cslDate } from './csl-date.ts';
import type { CslItem } from './csl-item.ts';
import { distinctNames, filedAs } from './csl-name.ts';
import { doubtNote, joinedNote, rolesNote, sentence } from './roles-note.ts';

/** MARC relators of those who stand as authors, the first set that anybody fits: of a piece its maker, else its painter. */
const authorRoles: Readonly<Record<CitableObject['what'], readonly (readonly string[])[]>> = {
  artwork: [
    ['art', 'cre', 'scl', 'drm', 'pnt', 'aut'],
    ['att', 'dsr'],
  ],
  piece: [
    ['mfr', 'cre', 'pot'],
    ['art', 'dec', 'egr', 'etr', 'dsr'],
  ],
};

/**
 * An artwork or a decorated object as a CSL-JSON item of the type `graphic`, which stands for any still picture or
 * object. Its holder is not among the `archive` variables: with them styles would give the date twice.
 */
export function objectToCsl(object: CitableObject, language = 'en'): CslItem {
  const agents = object.agents ?? [];
  const authors = authorsOf(object.what, agents);
  return compact({
    id: object.id,
    type: 'graphic',
    title: object.title ?? `[${object.form ?? object.what}]`,
    author: distinctNames(authors),
    issued: cslDate(object.date, language),
    genre: object.title === undefined && object.medium === undefined ? undefined : object.form,
    medium: object.medium,
    dimensions: object.size,
    language: object.languages?.[0],
    note: joinedNote([
      ...rolesNote(agents.filter(agent => !authors.includes(agent))),
      ...doubtNote(authors),
      ...(object.marks ?? []).flatMap(markNote),
      ...survivalNote(object.survival),
    ]),
    custom: compact({
      id: object.id,
      edtf: object.date?.edtf,
      dateAsWritten: object.date?.asWritten,
      filedAs: filedAs(agents),
    }),
  });
}

function authorsOf(what: CitableObject['what'], agents: readonly CitableAgent[]): readonly CitableAgent[] {
  for (const roles of authorRoles[what]) {
    const found = agents.filter(agent => roles.includes(agent.role));
    if (found.length > 0) return found;
  }
  return [];
}

function markNote({ reading, position }: NonNullable<CitableObject['marks']>[number]): readonly string[] {
  return reading === undefined ? [] : [sentence(`Marked “${reading}”${position === undefined ? '' : ` ${position}`}`)];
}

function survivalNote(survival: CitableObject['survival']): readonly string[] {
  if (survival === 'LOST') return ['Lost.'];
  return survival === 'INFERRED' ? ['Not recorded; known by inference only.'] : [];
}
