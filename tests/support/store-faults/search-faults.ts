import type { AnyRow } from '../../../src/domain/model/row.ts';
import type { GraphStore, PutRow, SearchAsked, SearchFilter, SearchFound } from '../../../src/store/graph-store.ts';
import { changed, type Fault } from './fault.ts';

export const searchFaults: readonly Fault[] = [
  {
    fault: 'the best class is not the first',
    spoil: s => ({
      search: async asked => {
        const found = await s.search(asked);
        return { ...found, hits: [...found.hits].reverse() };
      },
    }),
  },
  {
    fault: 'beginnings are not found',
    spoil: s => ({
      search: async asked => {
        const found = await s.search(asked);
        return { ...found, hits: found.hits.filter(hit => hit.match !== 'PREFIX') };
      },
    }),
  },
  { fault: 'a search is never cut', spoil: s => answered(s, found => ({ ...found, cut: false })) },
  { fault: 'a search is said to be cut', spoil: s => answered(s, found => ({ ...found, cut: true })) },
  { fault: 'there is never more', spoil: s => answered(s, found => ({ ...found, more: false })) },
  { fault: 'pages begin anew', spoil: s => asked(s, ({ after: _, ...others }) => others) },
  {
    fault: 'what is cut falls into the worst class',
    spoil: s => ({
      search: async question => {
        const found = await s.search(question);
        const { hits } = await s.search({ ...question, cap: 1000 });
        const known = new Set(found.hits.map(hit => hit.id));
        const lost = hits.filter(hit => !known.has(hit.id)).map(hit => ({ ...hit, match: 'SOME' as const }));
        return { ...found, hits: [...found.hits, ...lost] };
      },
    }),
  },
  {
    fault: 'names are cut as well',
    spoil: s => answered(s, (found, { cap }) => ({ ...found, hits: found.hits.slice(0, 5 * cap) })),
  },
  {
    fault: 'any word finds records by itself',
    spoil: s => asked(s, ({ text, ...others }) => ({ ...others, ...(text && { text: { ...text, few: 1000 } }) })),
  },
  {
    fault: 'words are folded to ASCII',
    spoil: s =>
      asked(s, ({ text, ...others }) => ({
        ...others,
        ...(text && { text: { ...text, tokens: text.tokens.map(token => token.replace(/[^a-z0-9]/g, 'x')) } }),
      })),
  },
  {
    fault: 'long beginnings are not found',
    spoil: s =>
      asked(s, ({ text, ...others }) => ({
        ...others,
        ...(text && { text: { ...text, tokens: text.tokens.map(token => (token.length > 4 ? `${token}x` : token)) } }),
      })),
  },
  {
    fault: 'old words stay',
    spoil: s => {
      const old = new Map<string, string[]>();
      return changed(s, batch => ({
        ...batch,
        put: batch.put.map(put => {
          const tokens = [...(old.get(put.row.id) ?? []), ...(put.tokens ?? [])];
          old.set(put.row.id, tokens);
          return put.tokens === undefined ? put : { ...put, tokens };
        }),
      }));
    },
  },
  {
    fault: 'claims are found as the records they name',
    spoil: s => ({
      search: async question => {
        const claims = (await s.scan(undefined, 99)).filter(row => row.kind === 'Copying');
        const found = await s.search(question);
        const hits = claims.map(claim => ({ id: claim.id, sort: '', kind: 'Plate' as const, match: 'SOME' as const }));
        return { ...found, hits: [...found.hits, ...hits] };
      },
    }),
  },
  ...(['kinds', 'days', 'place', 'subject'] as const).map(
    (name): Fault => ({
      fault: `the condition ${name} does not limit a search`,
      spoil: s => filtered(s, ({ [name]: _, ...others }) => others),
    }),
  ),
  {
    fault: 'a filter does not limit a search for a text',
    spoil: s => asked(s, question => (question.text ? { ...question, filter: {} } : question)),
  },
  {
    fault: 'days are open to the past',
    spoil: s => filtered(s, ({ days, ...others }) => ({ ...others, ...(days && { days: { hi: days.hi } }) })),
  },
  {
    fault: 'days are open to the future',
    spoil: s => filtered(s, ({ days, ...others }) => ({ ...others, ...(days && { days: { lo: days.lo } }) })),
  },
  {
    fault: 'approximate dates are read as they are written',
    spoil: s => filtered(s, ({ slack: _, ...others }) => others),
  },
  {
    fault: 'datings keep the days they had first',
    spoil: s => {
      const first = new Map<string, PutRow['days']>();
      return changed(s, batch => ({
        ...batch,
        put: batch.put.map(put => {
          if (!first.has(put.row.id)) first.set(put.row.id, put.days);
          const days = first.get(put.row.id);
          return days === undefined ? put : { ...put, days };
        }),
      }));
    },
  },
  {
    fault: 'a subject is found by its notation alone',
    spoil: s => filtered(s, ({ subject, ...others }) => ({ ...others, ...(subject && { subject: `${subject}0` }) })),
  },
  ...linkFaults(),
];

/** Claims and fields without which a filter passes less. */
function linkFaults(): readonly Fault[] {
  const blind: Readonly<Record<string, (row: AnyRow) => AnyRow>> = {
    'places within places': row => (row.kind === 'Place' ? without(row, 'within') : row),
    imprints: row => (row.kind === 'Imprint' ? { ...row, stance: 'REJECTED' } : row),
    'places of making': row => (row.kind === 'MadeAt' ? { ...row, stance: 'REJECTED' } : row),
    stays: row => (row.kind === 'Stay' ? { ...row, stance: 'REJECTED' } : row),
    attributions: row => (row.kind === 'Attribution' ? { ...row, stance: 'REJECTED' } : row),
    appearances: row => (row.kind === 'Appearance' ? { ...row, stance: 'REJECTED' } : row),
    'stances of depictions': row => (row.kind === 'Depiction' ? without(row, 'certainty') : row),
  };
  return Object.entries(blind).map(([name, change]) => ({
    fault: `a search does not see ${name}`,
    spoil: s => ({
      write: batch => s.write({ ...batch, put: batch.put.map(put => ({ ...put, row: change(put.row) })) }),
    }),
  }));
}

function without(row: AnyRow, name: string): AnyRow {
  return Object.fromEntries(Object.entries(row).filter(([field]) => field !== name)) as unknown as AnyRow;
}

function asked(store: GraphStore, change: (question: SearchAsked) => SearchAsked): Partial<GraphStore> {
  return { search: (question, signal) => store.search(change(question), signal) };
}

function filtered(store: GraphStore, change: (filter: SearchFilter) => SearchFilter): Partial<GraphStore> {
  return asked(store, question => ({ ...question, filter: change(question.filter) }));
}

function answered(
  store: GraphStore,
  change: (found: SearchFound, question: SearchAsked) => SearchFound,
): Partial<GraphStore> {
  return { search: async (question, signal) => change(await store.search(question, signal), question) };
}
