import { appearanceLocator } from '../domain/model/appearance-locator.ts';
import { isClaimKind } from '../domain/model/kinds.ts';
import type { AnyClaim, AnyRow } from '../domain/model/row.ts';
import { eitherOrIn } from '../questions/either-or.ts';
import type { Lineage, LineageAppearance, LineageNode, LineageStepTaken } from '../questions/lineage-answer.ts';
import type { GraphStore } from '../store/graph-store.ts';
import { claimText, evidenceText, namedInEvidence } from './claim-text.ts';
import { contradictionsText, groundText } from './contradictions-text.ts';
import { editionText } from './edition-text.ts';
import { groundsText, premisesText } from './grounds-text.ts';
import { directionText, madeText, makersText, pictureText } from './lineage-words.ts';
import { type NamedRows, namedRows } from './named-rows.ts';
import { daysText } from './reach-text.ts';

/** The answer as a scholar reads it: each picture with its days, direction, publications, and the claims that lead to it. */
export async function lineageText(answer: Lineage, store: GraphStore): Promise<string> {
  const claims = answer.rows.filter(isClaim);
  const rows = await namedRows(store, answer.rows, namedInEvidence(claims));
  const [start, ...others] = answer.nodes;
  const near = nearOf(answer);
  const sources = sourcesOf(answer);
  const farther = others.filter(node => !near.wholes.has(node.record) && !near.parts.has(node.record));
  const isSource = ({ record }: LineageNode) => sources.has(record);
  const sections = [
    ...some(
      'What it is part of',
      others.filter(({ record }) => near.wholes.has(record)),
    ),
    ...some(
      'Parts of it',
      others.filter(({ record }) => near.parts.has(record)),
    ),
    ...(answer.towards === 'COPIES' ? [] : [section('What it comes from', farther.filter(isSource))]),
    ...(answer.towards === 'SOURCES'
      ? []
      : [
          section(
            'What was made from it',
            farther.filter(node => !isSource(node)),
          ),
        ]),
  ];
  return [
    ...premisesText(answer.grounds.premises),
    `Lineage of ${rows.called(answer.of)}`,
    ...(start === undefined ? [] : nodeLines(start, answer, rows).slice(1)),
    ...(others.length === 0 ? [] : ['', directionsNote]),
    ...sections.flatMap(({ title, nodes }) => ['', ...sectionLines(title, nodes, answer, rows)]),
    ...endLines(answer, rows),
    ...eitherOrLines(answer, rows),
    ...contradictionsText(answer.contradictions, answer.grounds, rows),
    ...missingLines(answer, rows),
    ...(answer.cut
      ? ['', 'There is more than this: ask for it with --depth (30 steps at most), or from one of these.']
      : []),
    '',
    ...groundsText(answer.grounds),
    '',
  ].join('\n');
}

const directionsNote =
  'A direction after a name is that against the picture asked about; one in a step, that against its source.';

function isClaim(row: AnyRow): row is AnyClaim {
  return isClaimKind(row.kind);
}

/** What is reached from the one asked about without going from a source to its copy. */
function sourcesOf({ of, steps, towards }: Lineage): ReadonlySet<string> {
  const found = new Set<string>();
  if (towards === 'COPIES') return found;
  const queue = [of];
  for (const at of queue) {
    for (const { kind, copy, source } of steps) {
      const next = copy === at ? source : kind === 'Detail' && source === at ? copy : undefined;
      if (next === undefined || next === of || found.has(next)) continue;
      found.add(next);
      queue.push(next);
    }
  }
  return found;
}

/** What the one asked about is part of, and what is part of it. */
function nearOf({ of, steps }: Lineage): { readonly wholes: ReadonlySet<string>; readonly parts: ReadonlySet<string> } {
  const details = steps.filter(step => step.kind === 'Detail');
  const closure = (next: (id: string) => readonly string[]) => {
    const found = new Set([of]);
    for (const at of found) for (const id of next(at)) found.add(id);
    found.delete(of);
    return found;
  };
  return {
    wholes: closure(id => details.filter(({ copy }) => copy === id).map(({ source }) => source)),
    parts: closure(id => details.filter(({ source }) => source === id).map(({ copy }) => copy)),
  };
}

interface Section {
  readonly title: string;
  readonly nodes: readonly LineageNode[];
}

function section(title: string, nodes: readonly LineageNode[]): Section {
  return { title, nodes };
}

function some(title: string, nodes: readonly LineageNode[]): readonly Section[] {
  return nodes.length === 0 ? [] : [section(title, nodes)];
}

function sectionLines(title: string, nodes: readonly LineageNode[], answer: Lineage, rows: NamedRows): string[] {
  if (nodes.length === 0) return [`${title}: nothing is recorded.`];
  return [title, ...nodes.flatMap(node => nodeLines(node, answer, rows).map(line => `  ${line}`))];
}

function nodeLines(node: LineageNode, answer: Lineage, rows: NamedRows): string[] {
  const asked = node.record === answer.of;
  const heading = `${rows.called(node.record)} — ${pictureText(node.record, rows)}`;
  const lines = [
    ...(asked ? [pictureText(node.record, rows)] : []),
    ...makersText(node.record, answer.rows, rows),
    madeText(node),
    ...node.appearances.flatMap(appearance => appearanceLines(appearance, rows)),
    ...stepsTo(node, answer).flatMap(step => stepLines(step, rows)),
    node.record,
  ];
  return [asked ? heading : `${heading}${directionText(node)}`, ...lines.map(line => `    ${line}`)];
}

/** Steps that join it with one that stands before it. */
function stepsTo({ record }: LineageNode, { nodes, steps }: Lineage): readonly LineageStepTaken[] {
  const place = new Map(nodes.map((node, i) => [node.record, i]));
  const at = place.get(record)!;
  return steps.filter(({ copy, source }) => {
    const others = [copy, source].filter(id => id !== record);
    return others.length < 2 && others.every(id => place.get(id)! < at);
  });
}

function stepLines({ kind, by, source, copy }: LineageStepTaken, rows: NamedRows): string[] {
  const row = rows.row(by);
  if (kind === 'Detail' || row === undefined || !isClaim(row))
    return [`${rows.quoted(copy)} is part of ${rows.quoted(source)}`];
  return [claimText(row, rows.quoted), ...evidenceText(row, rows.quoted).map(line => `    ${line}`), `    ${by}`];
}

function appearanceLines({ claim, edition, published }: LineageAppearance, rows: NamedRows): string[] {
  const row = rows.row(claim);
  const locator = row?.kind === 'Appearance' ? appearanceLocator(row) : undefined;
  return [
    `in ${editionText(rows.row(edition)) ?? edition}${locator === undefined ? '' : ` — ${locator}`}`,
    `    published ${daysText(published)}`,
  ];
}

function endLines({ earliest, latest, nodes }: Lineage, rows: NamedRows): string[] {
  if (nodes.length < 2) return [];
  const named = (ids: readonly string[]) => ids.map(rows.called).join('; ');
  return ['', `Earliest: ${named(earliest)}.`, `Latest: ${named(latest)}.`];
}

/** Steps of which only one is true: each by itself is told above as if it were. */
function eitherOrLines(answer: Lineage, rows: NamedRows): string[] {
  return eitherOrIn(answer).flatMap(({ copyings, open }) => [
    '',
    'Of these only one is true',
    ...copyings.map(({ id }) => `  ${groundText(id, rows)}`),
    ...(open ? ['  or another that is not recorded'] : []),
  ]);
}

function missingLines({ missingLinks }: Lineage, rows: NamedRows): string[] {
  if (missingLinks.length === 0) return [];
  return [
    '',
    'What is missing',
    ...missingLinks.flatMap(({ message, claim }) => [`  ${message}`, `      ${groundText(claim, rows)}`]),
  ];
}
