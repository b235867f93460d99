import { foundBy } from '../../../src/domain/model/found-by.ts';
import type { NewRows, PackedPart } from '../../../src/store/graph-store.ts';
import { changed, type Fault } from './fault.ts';

export const writeFaults: readonly Fault[] = [
  {
    fault: 'change sets are numbered from 0',
    spoil: s => ({
      write: async batch => ({ changeSet: (await s.write(batch)).changeSet - 1 }),
      lastChangeSet: async () => (await s.lastChangeSet()) - 1,
    }),
  },
  {
    fault: 'every change set is there',
    spoil: s => ({
      changeSets: async numbers =>
        (await s.changeSets(numbers)).map((set, i) => set ?? { number: numbers[i]!, moment: '', who: '', why: '' }),
    }),
  },
  { fault: 'moments are as they are given', spoil: s => changed(s, batch => ({ ...batch, keepsMoment: true })) },
  {
    fault: 'a batch that puts nothing is left out',
    spoil: s => ({
      write: async batch => (batch.put.length === 0 ? { changeSet: await s.lastChangeSet() } : s.write(batch)),
    }),
  },
  {
    fault: 'links that wait are found by their key alone',
    spoil: s => ({ awaited: async origins => await s.awaited(origins.map(o => ({ ...o, source: 'DLC' }))) }),
  },
  { fault: 'parts that were packed are left out', spoil: s => changed(s, ({ packed: _, ...batch }) => batch) },
  {
    fault: 'a packed part takes what is there for new',
    spoil: s => {
      const parts = new Map<PackedPart, NewRows>();
      return {
        pack: part => {
          const packed = s.pack(part);
          parts.set(packed, part);
          return packed;
        },
        write: ({ packed = [], ...batch }) => {
          const rows = packed.flatMap(each => parts.get(each)?.rows ?? []);
          return s.write({ ...batch, put: [...rows.map(row => ({ row, ...foundBy(row) })), ...batch.put] });
        },
      };
    },
  },
  { fault: 'what has arrived still waits', spoil: s => changed(s, ({ arrived: _, ...batch }) => batch) },
  {
    fault: 'a batch does not wait for what must come before',
    spoil: s => changed(s, ({ after: _, ...batch }) => batch),
  },
  { fault: 'checkpoints are shared', spoil: s => ({ checkpoint: async () => s.checkpoint('a.xml') }) },
  {
    fault: 'a scan leaves the claims out',
    spoil: s => ({
      scan: async (after, limit, view) => (await s.scan(after, limit, view)).filter(row => row.kind !== 'Copying'),
    }),
  },
  { fault: 'a scan ignores the view', spoil: s => ({ scan: (after, limit) => s.scan(after, limit) }) },
  {
    fault: 'a scan begins with its position',
    spoil: s => ({
      scan: (after, limit) =>
        s.scan(after === undefined ? after : after.slice(0, -1), limit + (after === undefined ? 0 : 9)),
    }),
  },
  {
    fault: 'nothing is removed',
    spoil: s => changed(s, ({ remove: _, ...batch }) => batch),
  },
  {
    fault: 'what is removed is not told',
    spoil: s => ({
      changesAfter: async (number, limit) =>
        (await s.changesAfter(number, limit)).map(change => ({ ...change, removed: [] })),
    }),
  },
  {
    fault: 'the version that a change is made from is not looked at',
    spoil: s =>
      changed(s, batch => ({
        ...batch,
        put: batch.put.map(({ seen: _, ...put }) => put),
        ...(batch.remove === undefined ? {} : { remove: batch.remove.map(({ id }) => ({ id })) }),
      })),
  },
  {
    fault: 'whether a row is new is not looked at',
    spoil: s => changed(s, batch => ({ ...batch, put: batch.put.map(({ isNew: _, ...put }) => put) })),
  },
  {
    fault: 'a row that names nothing is written',
    spoil: s => ({ write: async batch => s.write(batch).catch(async () => ({ changeSet: await s.lastChangeSet() })) }),
  },
  {
    fault: 'half a batch that fails stays',
    spoil: s => ({
      write: async batch =>
        s.write(batch).catch(async error => {
          await s.write({ ...batch, put: batch.put.slice(0, 2), origins: [], windows: [] }).catch(() => undefined);
          throw error;
        }),
    }),
  },
  {
    fault: 'writes asked for at once overtake each other',
    spoil: s => {
      let n = 0;
      return {
        write: async batch => {
          await new Promise(resolve => setTimeout(resolve, n++ % 2));
          return s.write(batch);
        },
      };
    },
  },
  {
    fault: 'a write answers before it is made',
    spoil: s => ({
      write: async batch => {
        const changeSet = (await s.lastChangeSet()) + 1;
        setTimeout(() => s.write(batch).catch(() => undefined), 5);
        return { changeSet };
      },
    }),
  },
  {
    fault: 'what is written is read when it is too late',
    spoil: s => ({
      write: batch => new Promise((resolve, reject) => setTimeout(() => s.write(batch).then(resolve, reject), 1)),
    }),
  },
  { fault: 'the facts count nothing', spoil: s => ({ facts: async () => ({ ...(await s.facts()), records: 7 }) }) },
  { fault: 'close does nothing', spoil: () => ({ close: async () => undefined }) },
  {
    fault: 'closing twice fails',
    spoil: s => {
      let closed = false;
      return {
        close: async () => {
          if (closed) throw new Error('closed');
          closed = true;
          await s.close();
        },
      };
    },
  },
  {
    fault: 'a list for nothing fails',
    spoil: s => ({
      rows: async (ids, v) => {
        if (ids.length === 0) throw new Error('nothing');
        return s.rows(ids, v);
      },
    }),
  },
  {
    fault: 'close forgets what is being written',
    spoil: s => ({
      write: batch => new Promise((resolve, reject) => setTimeout(() => s.write(batch).then(resolve, reject), 3)),
    }),
  },
];
