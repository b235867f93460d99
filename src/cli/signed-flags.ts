import type { Signed } from '../questions/commands.ts';
import type { CliContext } from './context.ts';

/** Flags of commands that change something. */
export const signedFlags = {
  who: {
    kind: 'parsed',
    parse: String,
    optional: true,
    brief: 'Who changes it (else PLATESTEMMA_WHO, else the name under which you are logged in)',
    placeholder: 'name',
  },
  why: { kind: 'parsed', parse: String, optional: true, brief: 'Why, in a few words', placeholder: 'words' },
} as const;

export interface SignedFlags {
  readonly who?: string;
  readonly why?: string;
}

export function signedBy({ who, why }: SignedFlags, context: CliContext, reason: string): Signed {
  return { who: who ?? context.who, why: why ?? reason };
}
