import { validate } from 'dockerfile-utils';
import { finalStage, readDockerfile, type Stage, type Step } from './read-dockerfile.ts';

type Rule = readonly [fault: string, broken: (final: Stage, stages: readonly Stage[]) => boolean];

/** What the image keeps beside the linter's rules; a rule that is broken is a fault in these words. */
const rules: readonly Rule[] = [
  [
    'an image names no exact release',
    (_, stages) => !stages.every(stage => /^node:24\.\d+\.\d+-[\w-]+(@sha256:[0-9a-f]{64})?$/.test(stage.image)),
  ],
  ['the stages have different Nodes', (_, stages) => new Set(stages.map(stage => stage.image)).size !== 1],
  ['it is built in one stage', (_, stages) => stages.length < 2],
  ['packages do not come from the lock file', (_, stages) => !runs(stages).some(step => /^npm ci /.test(step.text))],
  [
    'packages are asked of the registry anew',
    (_, stages) => runs(stages).some(step => /\bnpm (i|install|update)\b/.test(step.text)),
  ],
  ['scripts of packages are run', (_, stages) => !runs(stages).every(scriptsStayIdle)],
  [
    'packages of development stay',
    (_, stages) => !runs(stages).some(step => /\bnpm prune --omit=dev /.test(step.text)),
  ],
  ['the final stage runs npm', final => final.all('RUN').some(step => /\bnpm\b/.test(step.text))],
  ['everything is copied', (_, stages) => sources(stages).some(source => /^\.?\/?$|\*/.test(source))],
  ['something is fetched', (_, stages) => stages.some(stage => stage.all('ADD').length > 0)],
  ['it runs as root, or as a name', final => !/^[1-9]\d*:[1-9]\d*$/.test(final.all('USER').at(-1)?.text ?? '')],
  ['a shell stands before the program', final => !isNode(final.all('ENTRYPOINT')) || !final.one('ENTRYPOINT').exec],
  ['its arguments go through a shell', final => !final.all('CMD').every(step => step.exec)],
  ['its health is not asked', final => !isNode(final.all('HEALTHCHECK')) || !final.one('HEALTHCHECK').exec],
  [
    'it is not stopped by SIGTERM',
    final =>
      final
        .all('STOPSIGNAL')
        .map(step => step.text)
        .join() !== 'SIGTERM',
  ],
  [
    'a secret stands in it',
    (_, stages) => stages.some(stage => variables(stage).some(step => /AUTH|PASS|SECRET|TOKEN/i.test(step.text))),
  ],
];

/** What a linter and the rules find in a Dockerfile. */
export function dockerfileFaults(text: string): readonly string[] {
  const linted = validate(text).map(({ range, message }) => `line ${range.start.line + 1}: ${message}`);
  const stages = readDockerfile(text);
  return [...linted, ...rules.filter(([, broken]) => broken(finalStage(stages), stages)).map(([fault]) => fault)];
}

/** What is copied from the folder of the Dockerfile. */
export function sources(stages: readonly Stage[]): readonly string[] {
  const copies = stages.flatMap(stage => stage.all('COPY')).filter(step => step.flags['from'] === undefined);
  return copies.flatMap(step => step.words.slice(0, -1));
}

/** The names that a .dockerignore lets through; it keeps out all, then names what it lets in. */
export function letThrough(text: string): readonly string[] {
  const [first, ...lines] = text.split('\n').filter(line => line !== '' && !line.startsWith('#'));
  const names = lines.map(line => /^!([\w.-]+)$/.exec(line)?.[1]);
  if (first !== '*' || names.includes(undefined))
    throw new Error('expected .dockerignore to be `*`, then `!name` lines');
  return names.map(name => name!);
}

function runs(stages: readonly Stage[]): readonly Step[] {
  return stages.flatMap(stage => stage.all('RUN'));
}

function scriptsStayIdle({ text }: Step): boolean {
  return text.split('&&').every(command => !/\bnpm (ci|prune)\b/.test(command) || command.includes('--ignore-scripts'));
}

function variables(stage: Stage): readonly Step[] {
  return [...stage.all('ENV'), ...stage.all('ARG')];
}

function isNode(steps: readonly Step[]): boolean {
  return steps.length === 1 && steps[0]!.words[0] === 'node';
}
