/** Opens the store named by its argument, and so brings it to the newest schema; says when it begins. */
import { openAndMigrate } from '../../../src/store/sqlite/migrate.ts';

process.stdout.write('begins\n');
openAndMigrate(process.argv[2]!, false).close();
