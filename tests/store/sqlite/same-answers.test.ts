import { test } from 'vitest';
import { sqliteStoreInProcess } from '../../support/sqlite-store-in-process.ts';
import { temporaryStore } from '../../support/temporary-store.ts';
import { expectSameAnswers } from '../same-answers.ts';

test('200 random sequences of changes and questions have the answers of the truth, as bytes', async () => {
  await expectSameAnswers(async () => sqliteStoreInProcess(temporaryStore()).store, 200);
}, 120_000);
