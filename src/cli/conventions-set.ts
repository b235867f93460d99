import { buildCommand } from '@stricli/core';
import { parseJson } from '../domain/text/parse-json.ts';
import type { CliContext } from './context.ts';
import { valueText } from './convention-text.ts';
import { type CommonFlags, commonFlags } from './flags.ts';
import { signedBy, signedFlags } from './signed-flags.ts';
import { printJson, printText, withDesk } from './with-desk.ts';

interface SetFlags extends CommonFlags {
  readonly who?: string;
  readonly why: string;
  readonly source?: string;
}

export const conventionsSet = buildCommand<SetFlags, [string, string], CliContext>({
  docs: {
    brief: 'Give a convention another value',
    fullDescription: [
      'Answers that rest on it are given by the new value from then on, and name its version, which counts up by itself. What it',
      'was is kept: ask with --as-of, or undo the change set. A key "route." and words joined by hyphens adds a recorded route.',
      '',
      '  platestemma conventions set imprintAhead 90 --why "bills of a Leipzig bookseller"',
      '  platestemma conventions set copy.afterIssue false --why "proofs went round" --source "letters of T. Calloway"',
      '  platestemma conventions set route.sameTown \'{"within": 10, "least": 0, "most": 21}\' --why "smaller towns"',
    ].join('\n'),
  },
  parameters: {
    positional: {
      kind: 'tuple',
      parameters: [
        { parse: String, brief: 'Key of the convention', placeholder: 'key' },
        { parse: String, brief: 'A number, true, false, null, a word, or JSON', placeholder: 'value' },
      ],
    },
    flags: {
      ...commonFlags,
      who: signedFlags.who,
      why: { kind: 'parsed', parse: String, brief: 'Why, in a few words', placeholder: 'words' },
      source: {
        kind: 'parsed',
        parse: String,
        optional: true,
        brief: 'Where the value comes from (else "convention")',
        placeholder: 'words',
      },
    },
  },
  func(flags, key, text) {
    const { source } = flags;
    return withDesk(this, flags, async ({ questions, commands }) => {
      const before = (await questions.conventions()).find(each => each.key === key);
      const what = { key, value: readValue(text), ...(source === undefined ? {} : { source }) };
      const { changeSet } = await commands.setConvention(what, signedBy(flags, this, ''));
      const now = await questions.convention(key);
      if (flags.json === true) {
        printJson(this, { convention: now, changeSet });
        return;
      }
      const told = `${key} is ${valueText(now.value, now.unit)}`;
      if (before?.version === now.version)
        printText(this, `${told} already (version ${now.version}): nothing is written.\n`);
      else {
        const was = before === undefined ? '' : `, in the place of ${valueText(before.value, before.unit)}`;
        printText(this, `${told} from change set ${changeSet} on (version ${now.version})${was}.\n`);
      }
    });
  },
});

/** A word that is no JSON is a text. */
function readValue(text: string): unknown {
  try {
    return parseJson(text);
  } catch {
    return text;
  }
}
