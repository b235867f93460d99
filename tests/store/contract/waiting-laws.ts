import { expect } from 'vitest';
import type { ClaimOf } from '../../../src/domain/model/row.ts';
import type { AwaitedLink } from '../../../src/store/graph-store.ts';
import { batchOf, edition, work } from '../../support/store-rows.ts';
import type { Law } from './law.ts';

const origin = { source: 'DLC', key: '99' };
const other = { source: 'DLC', key: '98' };
const waits = (name: string, from = origin): AwaitedLink => ({
  origin: from,
  claim: { id: `partof-of-${name}`, kind: 'PartOf', part: 'edition-of-a' } as ClaimOf<'PartOf'>,
  role: 'whole',
});

export const waitingLaws: readonly Law[] = [
  {
    says: 'links wait under the origin of the record they wait for, in the order in which they were put',
    check: async store => {
      await store.write(batchOf([work('birds'), edition('a')], { await: [waits('b'), waits('x', other)] }));
      await store.write(batchOf([], { await: [waits('a')] }));
      expect(await store.awaited([origin, { source: 'X', key: '99' }, other])).toEqual([
        [waits('b'), waits('a')],
        [],
        [waits('x', other)],
      ]);
      expect(await store.awaited([])).toEqual([]);
    },
  },
  {
    says: 'what has arrived is waited for no more; what waits from then on does',
    check: async store => {
      await store.write(batchOf([work('birds'), edition('a')], { await: [waits('b'), waits('x', other)] }));
      await store.write(batchOf([], { arrived: [origin, { source: 'DLC', key: 'none' }], await: [waits('c')] }));
      expect(await store.awaited([origin, other])).toEqual([[waits('c')], [waits('x', other)]]);
    },
  },
  {
    says: 'a checkpoint is that of its intake, the last one written, with the report as it was kept',
    check: async store => {
      const report = { taken: 10, problems: [{ code: 'X', message: 'é "q"' }], seconds: 0.25, none: null };
      await store.write(batchOf([], { checkpoint: { intake: 'a.xml', records: 10, report: {} } }));
      await store.write(batchOf([], { checkpoint: { intake: 'b.xml', records: 5, report: 'text' } }));
      await store.write(batchOf([], { checkpoint: { intake: 'a.xml', records: 20, report } }));
      expect(await store.checkpoint('a.xml')).toEqual({ records: 20, report });
      expect(await store.checkpoint('b.xml')).toEqual({ records: 5, report: 'text' });
      expect(await store.checkpoint('c.xml')).toBeUndefined();
    },
  },
];
