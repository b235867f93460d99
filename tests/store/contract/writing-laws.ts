import { expect } from 'vitest';
import { foldVersion } from '../../../src/domain/text/fold.ts';
import { windowsOfGroups } from '../../support/memory-store-groups.ts';
import { batchOf, copying, edition, plate, windowOf, work } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

const stray = copying('stray', 'plate-of-a', 'plate-of-none');

export const writingLaws: readonly Law[] = [
  {
    says: 'a row that names what is neither in the store nor in the batch is NOT_FOUND',
    check: async store => {
      await store.write(batchOf([plate('a')]));
      await expect(store.write(batchOf([stray]))).rejects.toMatchObject({
        code: 'NOT_FOUND',
        message: expect.stringContaining('plate-of-none'),
      });
    },
  },
  {
    says: 'a batch that fails leaves nothing behind, and the next one is as if it had not been',
    check: async store => {
      await store.write(batchOf([plate('a', { caption: 'before' })]));
      const failing = batchOf([plate('a', { caption: 'after' }), plate('b'), work('birds'), edition('a'), stray], {
        windows: [windowOf('edition-of-a')],
        origins: [{ source: 's', key: 'k', id: 'plate-of-b', digest: 'd' }],
        checkpoint: { intake: 'i', records: 1, report: {} },
      });
      await expect(store.write(failing)).rejects.toMatchObject({ code: 'NOT_FOUND' });
      expect(await store.scan(undefined, 9)).toEqual([{ ...plate('a', { caption: 'before' }), since: 1 }]);
      expect(await store.versions('plate-of-a')).toHaveLength(1);
      expect(await store.lastChangeSet()).toBe(1);
      expect(await store.byOrigin([{ source: 's', key: 'k' }])).toEqual([undefined]);
      expect(await store.checkpoint('i')).toBeUndefined();
      expect(windowsOfGroups(await store.windowGroups({}))).toEqual([]);
      const text = { whole: 'after', tokens: ['after'], few: 9 };
      expect((await store.search({ text, filter: {}, limit: 9, cap: 9 })).hits).toEqual([]);

      expect(await store.write(batchOf([plate('b'), copying('b', 'plate-of-b', 'plate-of-a')]))).toEqual({
        changeSet: 2,
      });
      expect((await store.linked(['plate-of-a'], [{ kind: 'Copying', name: 'source' }]))[0]).toEqual([
        { ...copying('b', 'plate-of-b', 'plate-of-a'), since: 2 },
      ]);
    },
  },
  {
    says: 'a row that is said to be new and is not fails the batch',
    check: async store => {
      const asNew = (caption: string) => batchOf([plate('a', { caption })]).put.map(put => ({ ...put, isNew: true }));
      await store.write({ ...batchOf([]), put: asNew('one') });
      await expect(store.write({ ...batchOf([]), put: asNew('two') })).rejects.toMatchObject({
        code: 'BROKEN_PROMISE',
      });
      expect(await store.versions('plate-of-a')).toEqual([{ ...plate('a', { caption: 'one' }), since: 1 }]);
    },
  },
  {
    says: 'windows and origins of what is not there are NOT_FOUND, and leave nothing behind',
    check: async store => {
      const origins = [{ source: 's', key: 'k', id: 'plate-of-none', digest: 'd' }];
      const windows = [windowOf('edition-of-none')];
      await expect(store.write(batchOf([plate('a')], { origins }))).rejects.toMatchObject({ code: 'NOT_FOUND' });
      await expect(store.write(batchOf([plate('a')], { windows }))).rejects.toMatchObject({ code: 'NOT_FOUND' });
      expect(await store.rows(['plate-of-a'])).toEqual([undefined]);
    },
  },
  {
    says: 'writes asked for at once are made in that order, each whole',
    check: async store => {
      const receipts = await Promise.all(
        Array.from({ length: 12 }, (_, i) => store.write(batchOf([plate('a', { caption: `${i}` }), plate(`n-${i}`)]))),
      );
      expect(receipts.map(receipt => receipt.changeSet)).toEqual(Array.from({ length: 12 }, (_, i) => i + 1));
      const captions = (await store.versions('plate-of-a')).map(row => (row.kind === 'Plate' ? row.caption : ''));
      expect(captions).toEqual(Array.from({ length: 12 }, (_, i) => `${i}`));
    },
  },
  {
    says: 'what is to come after something waits for it, and is not written if that fails',
    check: async store => {
      const before = Promise.withResolvers<void>();
      const waiting = store.write({ ...batchOf([plate('b')]), after: before.promise });
      expect(await store.write(batchOf([plate('a')]))).toEqual({ changeSet: 1 });
      before.resolve();
      expect(await waiting).toEqual({ changeSet: 2 });
      const failed = Promise.reject(new Error('of the one before'));
      failed.catch(() => undefined);
      await expect(store.write({ ...batchOf([plate('c')]), after: failed })).rejects.toThrow('of the one before');
      expect(await store.rows(['plate-of-c'])).toEqual([undefined]);
    },
  },
  {
    says: 'what a write has answered is read by everything asked after it',
    check: async store => {
      for (let i = 0; i < 5; i++) {
        await store.write(batchOf([plate(`n-${i}`)]));
        const [rows, listed, count] = await Promise.all([
          store.rows([`plate-of-n-${i}`]),
          store.list('Plate', undefined, 99),
          store.count('Plate'),
        ]);
        expect([rows[0]?.id, listed.length, count]).toEqual([`plate-of-n-${i}`, i + 1, i + 1]);
      }
    },
  },
  {
    says: 'what was given may be changed afterwards',
    check: async store => {
      const notes = ['one'];
      const given = plate('a', { notes });
      const writing = store.write(batchOf([given]));
      notes.push('two');
      await writing;
      expect(await store.rows(['plate-of-a'])).toEqual([{ ...given, notes: ['one'], since: 1 }]);
    },
  },
  {
    says: 'the facts tell the engine, the schema and the version of folding',
    check: async store => {
      const facts = await store.facts();
      expect(facts.engine).toMatch(/^\w+$/);
      expect(facts).toMatchObject({ foldVersion, records: 0, claims: 0 });
      expect(facts.schema).toBeGreaterThanOrEqual(1);
      expect(facts.bytes).toBeGreaterThanOrEqual(0);
    },
  },
];
