/**
 * Puts copies of two stores in one place by turns, for as long as it lives. Arguments: the two, and the place. Says "begun"
 * when the first stands there.
 */
import { copyFileSync } from 'node:fs';
import { replaceStore } from '../../src/store/sqlite/replace-store.ts';

const [one, other, place] = process.argv.slice(2) as [string, string, string];
for (let n = 0; ; n++) {
  copyFileSync(n % 2 === 0 ? one : other, `${place}.restoring`);
  try {
    await replaceStore(`${place}.restoring`, place, undefined);
  } catch (error) {
    // Whoever looks at it has it open.
    if ((error as { readonly code?: string }).code !== 'STORE_BUSY') throw error;
  }
  if (n === 0) process.stdout.write('begun\n');
}
