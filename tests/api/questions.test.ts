import { describe, expect, test } from 'vitest';
import { codes, data } from './ask.ts';
import { demoApi } from './demo-api.ts';

const { api, questions } = await demoApi();

describe('a record', () => {
  test('has its names, fields, notes, and what it came from', async () => {
    const query = `{
      node(id: "piece-shore-dish") {
        ... on Piece {
          english: label german: label(language: "de") french: label(language: "fr")
          labels { text language } form marks { id form reading } notes columns { name text } sameAs origins { source key }
          motifs { totalCount nodes { id caption piece { id } } }
        }
      }
    }`;
    expect(await data(api, query)).toMatchObject({
      node: {
        english: 'Dish with shore scenes',
        german: 'Schüssel mit Uferszenen',
        french: 'Dish with shore scenes',
        labels: [
          { text: 'Dish with shore scenes', language: 'en' },
          { text: 'Schüssel mit Uferszenen', language: 'de' },
        ],
        form: 'dish',
        marks: [
          { id: 'mark-1', form: 'YEAR_MARK', reading: 'E 1766' },
          { id: 'mark-2', form: 'SIGNATURE', reading: 'P.O.' },
        ],
        columns: [],
        sameAs: [],
        origins: [],
        motifs: { totalCount: 3 },
      },
    });
  });
});

describe('a claim', () => {
  test('has its sentence, its standing, and what it connects', async () => {
    const query = `{
      node(id: "dating-dish-year-mark") {
        __typename
        ... on Dating { says germanSays: says(language: "de") standing stance certainty event date basis of { id __typename } }
      }
    }`;
    expect(await data(api, query)).toEqual({
      node: {
        __typename: 'Dating',
        says: 'Dish with shore scenes was made 1766',
        germanSays: 'Schüssel mit Uferszenen was made 1766',
        standing: 'STANDING',
        stance: 'HELD',
        certainty: 'CERTAIN',
        event: 'MADE',
        date: '1766',
        basis: 'MARK',
        of: { id: 'piece-shore-dish', __typename: 'Piece' },
      },
    });
  });

  test('is found by what it is about, by kind and by stance', async () => {
    const about = 'about: "piece-shore-dish"';
    const query = `{
      all: claims(${about}) { nodes { id } }
      dated: claims(${about}, kinds: [DATING]) { nodes { id } }
      rejected: claims(${about}, stance: [REJECTED]) { nodes { id } }
      withdrawn: claims(${about}, standing: WITHDRAWN) { nodes { id } }
      none: claims(about: "piece-never-made") { nodes { id } }
    }`;
    const answer = (await data(api, query)) as Record<string, { nodes: { id: string }[] }>;
    const ids = Object.fromEntries(
      Object.entries(answer).map(([name, found]) => [name, found.nodes.map(node => node.id)]),
    );
    expect(ids['dated']).toEqual(['dating-dish-year-mark']);
    expect(ids['all']).toEqual(expect.arrayContaining(['dating-dish-year-mark']));
    expect(ids['all']?.length).toBeGreaterThan(1);
    expect(ids['all']).toEqual(ids['all']?.toSorted());
    expect([ids['rejected'], ids['withdrawn'], ids['none']]).toEqual([[], [], []]);
  });

  test('claims without a subject or a kind are too many to ask for', async () => {
    expect(await codes(api, '{ claims { nodes { id } } }')).toEqual(['INPUT_INVALID']);
  });
});

describe('reach', () => {
  test('says of each edition what the question answers', async () => {
    const query = `{
      reach(piece: "piece-shore-dish", first: 200) {
        objectDay { first last }
        counts { inEveryCase inSomeCases inNoCase contradictory differOnPage }
        editions { nodes { verdict margin { every some } edition { id } flags why { code message } arrival { first last } } }
        grounds { basis supposed asOf cautions conventions { key version convention { id } } }
      }
    }`;
    const { reach } = (await data(api, query)) as { reach: Record<string, unknown> };
    const asked = await questions.reach({ piece: 'piece-shore-dish', page: { first: 200 } });
    const { byPlace: _byPlace, byDecade: _byDecade, ...counts } = asked.counts;
    expect(reach['counts']).toEqual(counts);
    const rows = (reach['editions'] as { nodes: Record<string, unknown>[] }).nodes;
    expect(rows.map(({ edition, verdict, margin, flags, why }) => ({ edition, verdict, margin, flags, why }))).toEqual(
      asked.rows.items.map(({ item }) => ({
        edition: { id: item.edition },
        verdict: item.verdict,
        margin: { every: item.margin.every ?? null, some: item.margin.some ?? null },
        flags: item.flags,
        why: item.why,
      })),
    );
    expect(reach['objectDay']).toEqual({ first: '1766-01-01', last: '1772-01-01' });
    expect(reach['grounds']).toMatchObject({ supposed: false, asOf: null, cautions: asked.grounds.cautions });
  });

  test('counts by place are as many as asked for, the largest first, and say how many there are', async () => {
    const query = (args: string) =>
      `{ reach(piece: "piece-shore-dish") { counts { places byPlace${args} { place { id } inEveryCase inSomeCases inNoCase contradictory } } } }`;
    const asked = await questions.reach({ piece: 'piece-shore-dish', page: { first: 0 }, tallies: true });
    const all = asked.counts.byPlace!.map(({ place, ...counts }) => ({
      place: place === undefined ? null : { id: place },
      ...counts,
    }));
    expect(all.length).toBeGreaterThan(2);
    const counts = { places: all.length, byPlace: all };
    expect(await data(api, query(''))).toEqual({ reach: { counts } });
    expect(await data(api, query('(first: 2)'))).toEqual({
      reach: { counts: { ...counts, byPlace: all.slice(0, 2) } },
    });
    expect(await codes(api, query('(first: 201)'))).toEqual(['INPUT_INVALID']);
  });

  test('a place that is not recorded is named', async () => {
    const query = '{ reach(at: { placeName: "London" }, by: "1766-06") { target { label } objectDay { first last } } }';
    expect(await data(api, query)).toEqual({
      reach: { target: { label: 'London' }, objectDay: { first: '1766-06-01', last: '1766-06-30' } },
    });
  });

  test('neither a day nor a piece is refused', async () => {
    expect(await codes(api, '{ reach(at: { placeName: "London" }) { counts { inNoCase } } }')).toEqual([
      'INPUT_INVALID',
    ]);
  });
});

describe('search', () => {
  test('finds records with the class of their match', async () => {
    const query =
      '{ search(text: "Pleasures of the Shore", kinds: [WORK, EDITION], first: 2) { cut edges { match node { id } } } }';
    expect(await data(api, query)).toEqual({
      search: {
        cut: false,
        edges: [
          { match: 'WHOLE', node: { id: 'work-shore-pleasures' } },
          { match: 'BEGINNING', node: { id: 'edition-shore-london-1764' } },
        ],
      },
    });
  });

  test('a text without a letter is refused', async () => {
    expect(await codes(api, '{ search(text: "…") { cut } }')).toEqual(['INPUT_INVALID']);
  });
});

describe('citation', () => {
  const of = 'of: ["edition-shore-london-1764"]';

  test('is given in each form, record by record', async () => {
    const query = `{
      text: citation(${of}) { text items { record { id } text } style locale }
      bibtex: citation(${of}, format: BIBTEX) { text }
      csl: citation(${of}, format: CSL_JSON) { text }
    }`;
    const answer = (await data(api, query)) as Record<string, { text: string; items: { record: { id: string } }[] }>;
    expect(answer['text']?.items.map(item => item.record.id)).toEqual(['edition-shore-london-1764']);
    expect(answer['text']?.text).toContain('Pleasures of the Shore');
    expect(answer['bibtex']?.text).toMatch(/^\s*@\w+\{/);
    expect(JSON.parse(answer['csl']?.text ?? '')).toMatchObject([{ title: expect.stringContaining('Pleasures') }]);
  });

  test('what is not there, or cannot be cited, is told', async () => {
    expect(await codes(api, '{ citation(of: ["edition-never-made"]) { text } }')).toEqual(['NOT_FOUND']);
    expect(await codes(api, '{ citation(of: ["work-ferry-print"]) { text } }')).toEqual(['INPUT_INVALID']);
  });
});

describe('history', () => {
  test('says who, when and why', async () => {
    const changeSet = { number: 1, who: 'demo', why: 'the demo world' };
    const change = '{ what changeSet { number who why } fields { name before after } }';
    const query = `{
      history(of: "piece-shore-dish") { nodes ${change} }
      node(id: "piece-shore-dish") { ... on Piece { history { nodes ${change} } } }
      unknown: history(of: "nonsense") { nodes { what } }
    }`;
    const nodes = [{ what: 'ADDED', changeSet, fields: [] }];
    expect(await data(api, query)).toEqual({
      history: { nodes },
      node: { history: { nodes } },
      unknown: { nodes: [] },
    });
  });

  test('change sets come after the one that is known', async () => {
    const query =
      '{ a: changes { nodes { number } pageInfo { endCursor hasNextPage } } b: changes(after: 1) { nodes { number } } }';
    expect(await data(api, query)).toEqual({
      a: { nodes: [{ number: 1 }], pageInfo: { endCursor: '1', hasNextPage: false } },
      b: { nodes: [] },
    });
  });
});
