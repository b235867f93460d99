import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { sqliteStoreInProcess } from '../../support/sqlite-store-in-process.ts';
import { temporaryStore } from '../../support/temporary-store.ts';
import { describeLaws, describeStore } from '../contract/describe-store.ts';
import { searchFilterLaws } from '../contract/search-filter-laws.ts';

describeStore('the store in a SQLite file', () => openSqliteStore(temporaryStore(), { create: true }));

describeLaws(
  'a store in a SQLite file where every filter passes many',
  searchFilterLaws,
  async () => sqliteStoreInProcess(temporaryStore(), 0).store,
);
