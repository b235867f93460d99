import { buildCommand } from '@stricli/core';
import { howMany } from '../domain/text/how-many.ts';
import { checkStore, type StoreFault } from '../questions/check-store.ts';
import type { StoreFacts } from '../store/graph-store.ts';
import type { CliContext } from './context.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { printJson, withDesk } from './with-desk.ts';

interface CheckFlags extends CommonFlags {
  readonly rebuild?: boolean;
}

export const check = buildCommand<CheckFlags, [], CliContext>({
  docs: {
    brief: 'Prove that the store is whole, and that what is derived agrees with what was recorded',
    fullDescription: [
      'Reads every record and claim, works out again what is derived from them (their order, the days of publication), and',
      'compares. Prints the checksum of the canonical export: equal for two stores that were filled from',
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
      const rebuild = flags.rebuild === true;
      const found = await checkStore(desk.store, this.world, { rebuild });
      // Only what is derived can be made anew.
      const left =
        rebuild && found.faults.length > 0
          ? (await checkStore(desk.store, this.world, { rebuild: false })).faults
          : found.faults;
      if (left.length > 0) this.partial();
      if (flags.json === true) printJson(this, found);
      else {
        const { facts } = found;
        this.process.stdout.write(
          [
            `${howMany(facts.records, 'record')} and ${howMany(facts.claims, 'claim')}${roomText(facts)}, ${howMany(found.changeSets, 'change set')}`,
            `checksum ${found.checksum}`,
            ...found.faults.slice(0, 50).map(fault => `  ${fault.id}: ${fault.message}`),
            verdictText(found.faults, left, rebuild),
            '',
          ].join('\n'),
        );
      }
    });
  },
});

function verdictText(found: readonly StoreFault[], left: readonly StoreFault[], rebuild: boolean): string {
  if (found.length === 0) return 'Everything agrees.';
  const faults = found.length === 1 ? '1 fault' : `${found.length.toLocaleString('en')} faults`;
  if (!rebuild) return `${faults}: check --rebuild makes anew what is derived.`;
  return left.length === 0 ? `${faults}, made anew.` : `${faults}; ${left.length} left that cannot be made anew.`;
}

/** Of a store that a server keeps, the server alone knows. */
function roomText({ bytes, logBytes = 0 }: StoreFacts): string {
  if (bytes === 0) return '';
  return ` in ${(bytes / 1e6).toFixed(1)} MB (write-ahead log ${(logBytes / 1e6).toFixed(1)} MB)`;
}
