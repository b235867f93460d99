import { appearanceLocator } from '../domain/model/appearance-locator.ts';
import type { Lineage, LineageAppearance, LineageStepTaken } from '../questions/lineage-answer.ts';
import { daysJson } from './days-json.ts';

/** The answer with the names of the API: ids stand for records and claims, days are written out. */
export function lineageJson(answer: Lineage): unknown {
  const { of, nodes, steps, earliest, latest, contradictions, missingLinks, cut, grounds, rows } = answer;
  const claims = new Map(rows.map(row => [row.id, row]));
  const locator = ({ claim }: LineageAppearance): string | null => {
    const row = claims.get(claim);
    return row?.kind === 'Appearance' ? (appearanceLocator(row) ?? null) : null;
  };
  return {
    picture: of,
    links: {
      nodes: nodes.map(node => ({
        ...node,
        made: daysJson(node.made),
        recorded: daysJson(node.recorded),
        appearances: node.appearances.map(each => ({
          appearance: each.claim,
          edition: each.edition,
          locator: locator(each),
          published: daysJson(each.published),
        })),
      })),
      steps: steps.map(stepJson),
    },
    earliest,
    latest,
    contradictions: contradictions.map(({ daysShort = null, ...each }) => ({ ...each, daysShort })),
    missingLinks,
    cut,
    grounds,
  };
}

function stepJson({ kind, by, copy, source }: LineageStepTaken): unknown {
  return kind === 'Detail' ? { detail: copy, whole: source } : { kind, id: by, copy, source };
}
