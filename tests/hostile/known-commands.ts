import { runCli } from '../support/run-cli.ts';

/** A command as its help tells it. */
export interface KnownCommand {
  readonly words: readonly string[];
  readonly flags: readonly { readonly name: string; readonly takesValue: boolean }[];
}

/** Every command of the program with its flags: one that is added is there too. */
export async function knownCommands(): Promise<readonly KnownCommand[]> {
  const usage = usageOf((await runCli(['--help'])).out);
  const commands = usage.flatMap(line => {
    const [, first, second = ''] = /^platestemma ([a-z]+)(?: ([a-z|-]+) \.\.\.)?/.exec(line) ?? [];
    if (first === undefined) return [];
    return second === '' ? [[first]] : second.split('|').map(each => [first, each]);
  });
  return Promise.all(
    commands.map(async words => {
      const [line = ''] = usageOf((await runCli([...words, '--help'])).out);
      const flags = [...line.matchAll(/[[(]--([a-z-]+)( [^\])]+)?[\])]/g)];
      return { words, flags: flags.map(([, name, value]) => ({ name: name!, takesValue: value !== undefined })) };
    }),
  );
}

function usageOf(help: string): string[] {
  return /USAGE\n([\s\S]*?)\n\n/
    .exec(help)![1]!
    .split('\n')
    .map(line => line.trim());
}
