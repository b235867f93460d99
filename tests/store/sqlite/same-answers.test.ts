import { expect, test } from 'vitest';
import { sqliteStoreInProcess } from '../../support/sqlite-store-in-process.ts';
import { temporaryStore } from '../../support/temporary-store.ts';
import { expectSameAnswers } from '../same-answers.ts';

test('200 random sequences of changes and questions have the answers of the truth, as bytes', async () => {
  await expectSameAnswers(async () => sqliteStoreInProcess(temporaryStore()).store, 200);
}, 120_000);

test('so have 200 where few records are many, as in a large store', async () => {
  let opened = 0;
  await expectSameAnswers(async () => sqliteStoreInProcess(temporaryStore(), opened++ % 3).store, 200);
  expect(opened).toBeGreaterThanOrEqual(200);
}, 120_000);
