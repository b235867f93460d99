import { createReadStream, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { marcxmlIntentions } from '../../src/intake/marcxml/marcxml-intentions.ts';
import { applyIntake } from '../../src/questions/apply-intake.ts';
import { emptyReport, type IntakeReport } from '../../src/questions/intake-report.ts';
import type { World } from '../../src/questions/ports.ts';
import type { GraphStore } from '../../src/store/graph-store.ts';

/** Folder of the library's records, within the outside material. */
export const libraryRecords = 'marcxml-19c';

/** Files of the library's records, in order. */
export function libraryFiles(folder: string): readonly string[] {
  return readdirSync(folder)
    .filter(name => name.endsWith('.xml'))
    .sort()
    .map(name => join(folder, name));
}

/** Takes library records into a store, file by file; the report of each. */
export async function takeLibrary(
  store: GraphStore,
  world: World,
  files: readonly string[],
): Promise<readonly IntakeReport[]> {
  const reports: IntakeReport[] = [];
  for (const file of files) {
    const records = marcxmlIntentions(createReadStream(file, { highWaterMark: 1 << 18 }), { file });
    reports.push(
      await applyIntake(store, world, records, emptyReport('library'), {
        intake: file,
        who: 'intake',
        why: 'marcxml',
      }),
    );
  }
  return reports;
}
