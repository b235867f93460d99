import { memoryStore } from '../support/memory-store.ts';
import { describeStore } from './contract/describe-store.ts';

describeStore('the store in memory', async () => memoryStore());
