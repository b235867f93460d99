import { claimKindNames, claimKinds, type KindName, recordKindNames, recordKinds } from './kinds.ts';
import { described } from './sdl.ts';
import { rowField } from './sdl-commands.ts';

/** The input of what a question supposes, as committed in schema/graphql/supposed.graphql. */
export function supposedSdl(): string {
  const kinds: readonly KindName[] = [...recordKindNames, ...claimKindNames];
  const fields = kinds.map(kind => {
    const [one] = { ...recordKinds, ...claimKinds }[kind].words.en;
    return `${described(`Supposed: ${one}.`, '  ')}  ${rowField(kind)}: Add${kind}Input`;
  });
  const doc =
    'A record or claim that a question takes to be there: exactly one of these. Nothing is written, so that nobody signs it. Others that are supposed name it by the id that it is given. A convention takes the place of that with its key.';
  return `# Generated from src/domain/model/kinds/ by \`npm run generate\`: change the declarations, not this file.\n\n${described(doc)}input Supposed @oneOf {\n${fields.join('\n')}\n}\n`;
}
