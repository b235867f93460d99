import { buildCommand } from '@stricli/core';
import { checkStore } from '../questions/check-store.ts';
import type { CliContext } from './context.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { printJson, withDesk } from './with-desk.ts';

interface CheckFlags extends CommonFlags {
  readonly rebuild?: boolean;
}

/** Thrown after what is wrong was printed: the process ends with 1, without a message of its own. */
export class CheckFailed extends Error {}

export const check = buildCommand<CheckFlags, [], CliContext>({
  docs: {
    brief: 'Prove that the store is whole, and that what is derived agrees with what was recorded',
    fullDescription: [
      'Reads every record and claim, works out again what is derived from them (order, words to find by, days of',
      'publication), and compares. Prints the checksum of the canonical export: equal for two stores that were filled from',
      'the same sources.',
      '',
      '  platestemma check',
      '  platestemma check --rebuild',
    ].join('\n'),
  },
  parameters: {
    flags: {
      ...commonFlags,
      rebuild: { kind: 'boolean', optional: true, withNegated: false, brief: 'Make anew what does not agree' },
    },
  },
  func(flags) {
    return withDesk(this, flags, async desk => {
      const found = await checkStore(desk.store, this.world, { rebuild: flags.rebuild === true });
      if (flags.json === true) printJson(this, found);
      else {
        const { facts } = found;
        this.process.stdout.write(
          [
            `${facts.records.toLocaleString('en')} records and ${facts.claims.toLocaleString('en')} claims in ${(facts.bytes / 1e6).toFixed(1)} MB (write-ahead log ${((facts.logBytes ?? 0) / 1e6).toFixed(1)} MB), ${found.changeSets} change sets`,
            `checksum ${found.checksum}`,
            ...found.faults.slice(0, 50).map(fault => `  ${fault.id}: ${fault.message}`),
            found.faults.length === 0
              ? 'Everything agrees.'
              : `${found.faults.length} faults${flags.rebuild === true ? ', made anew' : ': check --rebuild makes anew what is derived'}.`,
            '',
          ].join('\n'),
        );
      }
      if (found.faults.length > 0 && flags.rebuild !== true) throw new CheckFailed();
    });
  },
});
