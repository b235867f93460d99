import { openSqliteStore } from '../../../src/store/sqlite/open.ts';
import { temporaryStore } from '../../support/temporary-store.ts';
import { describeStore } from '../contract/describe-store.ts';

describeStore('the store in a SQLite file', () => openSqliteStore(temporaryStore(), { create: true }));
