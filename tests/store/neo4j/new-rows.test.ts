import { describe, expect, test } from 'vitest';
import { inOrderOfLinks } from '../../../src/store/neo4j/new-rows.ts';
import type { WrittenRow } from '../../../src/store/neo4j/written-batch.ts';

function row(id: string, kind: WrittenRow['kind'], fields: WrittenRow['fields'] = {}): WrittenRow {
  return { id, kind, isNew: true, fields, derived: {} };
}

/** Groups as "kind (links): ids", and what is linked later. */
function ordered(rows: readonly WrittenRow[]) {
  const { created, linkedLater } = inOrderOfLinks(rows);
  return {
    created: created.map(
      ({ kind, links, rows: those }) =>
        `${kind} (${links.map(({ name }) => name).join()}): ${those.map(({ id }) => id).join()}`,
    ),
    later: [...linkedLater].flatMap(([link, rowsOf]) =>
      rowsOf.map(([from, to]) => `${link.kind}.${link.name} ${from} ${to}`),
    ),
  };
}

describe('new rows', () => {
  test('come after what they link to, whatever the order in which they are given', () => {
    const rows = [
      row('imprint-1', 'Imprint', { edition: 'edition-1', place: 'place-there' }),
      row('edition-1', 'Edition', { work: 'work-1' }),
      row('work-1', 'Work'),
    ];
    expect(ordered(rows)).toEqual({
      created: ['Work (): work-1', 'Edition (work): edition-1', 'Imprint (edition,place): imprint-1'],
      later: [],
    });
  });

  test('are parted by the links that they have', () => {
    const rows = [
      row('imprint-1', 'Imprint', { edition: 'edition-there' }),
      row('imprint-2', 'Imprint', { edition: 'edition-there', place: 'place-there' }),
      row('imprint-3', 'Imprint', { edition: 'edition-there' }),
    ];
    expect(ordered(rows)).toEqual({
      created: ['Imprint (edition): imprint-1,imprint-3', 'Imprint (edition,place): imprint-2'],
      later: [],
    });
  });

  test('are linked later where they link to their own kind or in a circle', () => {
    const rows = [
      row('opinion-1', 'Opinion', { claim: 'copying-1' }),
      row('opinion-2', 'Opinion', { claim: 'opinion-1' }),
      row('copying-1', 'Copying', { copy: 'plate-there', source: 'opinion-1' }),
    ];
    expect(ordered(rows)).toEqual({
      created: ['Opinion (): opinion-1,opinion-2', 'Copying (copy,source): copying-1'],
      later: ['Opinion.claim opinion-1 copying-1', 'Opinion.claim opinion-2 opinion-1'],
    });
  });
});
