import type { RouteRow } from '../domain/conventions/route-conventions.ts';
import type { ConventionChange, ConventionInForce, ConventionTold } from '../questions/questions.ts';

/** A value with its unit, in words where it is more than one number. */
export function valueText(value: unknown, unit: string): string {
  if (isRoute(value)) return routeText(value);
  const words = typeof value === 'object' && value !== null ? JSON.stringify(value) : String(value);
  return unit === '' || typeof value !== 'number' ? words : `${words} ${unitText(value, unit)}`;
}

/** Units are symbols, or words for more than one; some are said of what the number is. */
function unitText(value: number, unit: string): string {
  if (unit === 'factor' || unit.includes(' of ')) return `(${unit})`;
  return value === 1 && /^\w+s$/.test(unit) ? unit.slice(0, -1) : unit;
}

/** One line each, as wide as the longest key. */
export function conventionLines(conventions: readonly ConventionInForce[]): string {
  const width = Math.max(...conventions.map(({ key }) => key.length));
  return conventions
    .map(({ key, value, unit, version }) => {
      const told = version === 1 ? '' : `  (version ${version})`;
      return `${key.padEnd(width)}  ${valueText(value, unit)}${told}\n`;
    })
    .join('');
}

export function conventionText(told: ConventionTold): string {
  const { key, value, unit, source, version, doc, fixed, shipped, changes } = told;
  const lines = [
    `${key}: ${valueText(value, unit)}`,
    doc,
    ...(isRoute(value) ? [`Value: ${JSON.stringify(value)}`] : []),
    ...(unit === '' ? [] : [`Unit: ${unit}`]),
    `Source: ${source}`,
    `Version ${version}${version === shipped?.version ? ', as it comes with the program' : ''}`,
    ...(shipped === undefined
      ? ['Nothing comes with the program in its place.']
      : version === shipped.version
        ? []
        : [`With the program comes ${valueText(shipped.value, shipped.unit)} (${shipped.source}).`]),
    ...(fixed === undefined ? [] : [`It cannot be changed: ${fixed}.`]),
    ...(changes.length === 0
      ? ['Nobody has changed it.']
      : ['Changed:', ...changes.map(each => changeLine(each, unit))]),
  ];
  return `${lines.join('\n')}\n`;
}

function changeLine({ changeSet: { number, moment, who, why }, then }: ConventionChange, unit: string): string {
  const what =
    then === undefined
      ? 'taken out: as it comes with the program'
      : `version ${then.version}, ${valueText(then.value, unit)} (${then.source})`;
  return `  change set ${number}, ${moment}, ${who}: ${why}: ${what}`;
}

function isRoute(value: unknown): value is RouteRow {
  return typeof value === 'object' && value !== null && 'bothWays' in value && 'years' in value;
}

function routeText({ from, to, bothWays, years: [first, last], least, most }: RouteRow): string {
  const years = [...(first === null ? [] : [`from ${first}`]), ...(last === null ? [] : [`to ${last}`])].join(' ');
  const days = most === null ? `${least} days or more` : `${least} to ${most} days`;
  return `${from.name} to ${to.name}${bothWays ? ' and back' : ''}${years === '' ? '' : `, ${years}`}: ${days}`;
}
