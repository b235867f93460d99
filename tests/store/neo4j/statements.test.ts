import neo4j, { type Plan } from 'neo4j-driver';
import { expect, test } from 'vitest';
import { claimStepNames, type WalkStep } from '../../../src/domain/descent/walk-steps.ts';
import { claimKindNames, type KindName, recordKindNames } from '../../../src/domain/model/kinds.ts';
import { linkKinds, linksOfKind } from '../../../src/domain/model/links.ts';
import { surroundingsText } from '../../../src/store/neo4j/around-statements.ts';
import { reachCypher, setConditions } from '../../../src/store/neo4j/reach-statements.ts';
import { searchConditions } from '../../../src/store/neo4j/search-conditions.ts';
import { searchCypher } from '../../../src/store/neo4j/search-statements.ts';
import { cypher, linkedAsOfText, linkedText } from '../../../src/store/neo4j/statements.ts';
import { beginningText, layerText, reachedText } from '../../../src/store/neo4j/walk-statements.ts';
import {
  closeLinksText,
  createLinksText,
  createRowsText,
  createStepsText,
  deleteStepsText,
  writeCypher,
} from '../../../src/store/neo4j/write-statements.ts';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { emptyNeo4jStore, neo4jServer } from '../../support/neo4j/empty-neo4j-store.ts';

const steps: readonly WalkStep[] = [...claimStepNames, 'Detail'];
const sides = ['SOURCES', 'COPIES'] as const;
const kinds: readonly KindName[] = [...recordKindNames, ...claimKindNames];
const links = linkKinds.slice(0, 3);

/** Statements by name; of those that are made by what is asked, the ones with most in them. */
const statements: Readonly<Record<string, string>> = {
  ...textsOf(cypher),
  ...textsOf(writeCypher),
  ...textsOf(reachCypher),
  ...textsOf(searchCypher),
  linked: linkedText(links),
  linkedAsOf: linkedAsOfText(links),
  beginning: beginningText,
  ...Object.fromEntries(sides.map(side => [`layer of ${side}`, layerText(steps, side)])),
  ...Object.fromEntries(sides.map(side => [`reached by ${side}`, reachedText(steps, [side], 30, [])])),
  reachedBothWays: reachedText(steps, sides, 30, [links, [], links]),
  surroundings: surroundingsText([links, [], links]),
  ...Object.fromEntries(kinds.map(kind => [`create rows of ${kind}`, createRowsText(kind, linksOfKind(kind))])),
  createLinks: createLinksText(links[0]!),
  closeLinks: closeLinksText(links[0]!),
  ...Object.fromEntries(steps.map(step => [`create steps of ${step}`, createStepsText(step)])),
  ...Object.fromEntries(steps.map(step => [`delete steps of ${step}`, deleteStepsText(step)])),
  groups: reachCypher.groups(setConditions, true),
  windows: reachCypher.windows(setConditions, true),
  inWindows: reachCypher.inWindows(true),
  byTitle: reachCypher.byTitle(true),
  byTitleInSets: reachCypher.byTitleInSets(setConditions, true),
  inOrder: searchCypher.inOrder(searchConditions),
  byWords: searchCypher.byWords(searchConditions),
  byFewWords: searchCypher.byFewWords(searchConditions),
  ...Object.fromEntries(searchConditions.map(condition => [`passing ${condition}`, searchCypher.passing(condition)])),
  ...Object.fromEntries(
    searchConditions.flatMap(condition => [
      [`in order of gathered ${condition}`, searchCypher.inOrderOfGathered(condition, [])],
      [`by words of gathered ${condition}`, searchCypher.byWordsOfGathered(condition, [])],
    ]),
  ),
};

/** Statements that look at all there is, on purpose: whether there is anything, and what is counted anew. */
const lookAtAll = ['schema', 'allWindows'];

function textsOf(texts: Readonly<Record<string, unknown>>): Record<string, string> {
  const constant = Object.entries(texts).filter((entry): entry is [string, string] => typeof entry[1] === 'string');
  return Object.fromEntries(constant);
}

function operatorsOf({ operatorType, children }: Plan): readonly string[] {
  return [operatorType.replace('@neo4j', ''), ...children.flatMap(operatorsOf)];
}

describeWithNeo4j('statements for Neo4j', () => {
  test('find what they ask for by an index, on a store that is empty too', async () => {
    await (await emptyNeo4jStore()).close();
    const { uri, user, password } = neo4jServer();
    const driver = neo4j.driver(uri, neo4j.auth.basic(user, password));
    const session = driver.session();
    const scanning: Record<string, readonly string[]> = {};
    for (const [name, text] of Object.entries(statements)) {
      const { summary } = await session.run(`EXPLAIN ${text}`, valuesFor(text));
      const scans = operatorsOf(summary.plan as Plan).filter(operator => /Scan$/.test(operator));
      if (scans.length > 0) scanning[name] = scans;
    }
    await driver.close();
    expect(Object.keys(scanning).sort()).toEqual(lookAtAll.toSorted());
  }, 300_000);
});

const lists =
  /^(?:ids|keys|sources|numbers|digests|queries|kinds|places|workshops|starts|dates|windows|after|known|traits|from|layer|excluded|stances|certainties|rows|origins|links|texts|steps|all|some|not)$/;
const integers = /^(?:limit|room|most|kept|number|asOf|firstDay|lastDay|profile|detail)$/;

/** A value of the right type for each parameter. */
function valuesFor(text: string): Readonly<Record<string, unknown>> {
  const names = new Set([...text.matchAll(/\$(\w+)/g)].map(([, name]) => name!));
  return Object.fromEntries([...names].map(name => [name, valueFor(name)]));
}

function valueFor(name: string): unknown {
  if (lists.test(name)) return [];
  if (integers.test(name)) return neo4j.int(1);
  if (name === 'isFirst') return true;
  return name === 'state' || name === 'changeSet' ? {} : 'text';
}
