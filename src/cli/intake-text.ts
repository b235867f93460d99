import { oneLine } from '../domain/text/one-line.ts';
import { emptyReport, type IntakeReport } from '../questions/intake-report.ts';

/** Sums of the reports of several files. */
export function joinReports(reports: readonly IntakeReport[]): IntakeReport {
  const joined = emptyReport(reports[0]?.batch ?? '');
  joined.complete = reports.every(report => report.complete);
  for (const report of reports) {
    for (const name of [
      'records',
      'taken',
      'known',
      'edited',
      'differing',
      'refused',
      'linksMade',
      'linksAwaited',
      'problemsLeftOut',
      'seconds',
    ] as const) {
      joined[name] += report[name];
    }
    joined.changeSet = Math.max(joined.changeSet, report.changeSet);
    joined.problems.push(...report.problems);
    for (const [kind, remark] of Object.entries(report.remarks)) {
      const sum = joined.remarks[kind];
      if (sum === undefined) joined.remarks[kind] = structuredClone(remark);
      else sum.count += remark.count;
    }
  }
  return joined;
}

/** A report with the names of the API: the place of each problem beside its code. */
export function reportJson(report: IntakeReport): unknown {
  const flat = ({ code, message, place }: IntakeReport['problems'][number]) => ({ ...place, code, message });
  const remarks = Object.entries(report.remarks).map(([kind, { count, examples }]) => [
    kind,
    { count, examples: examples.map(flat) },
  ]);
  return { ...report, problems: report.problems.map(flat), remarks: Object.fromEntries(remarks) };
}

/** A report as a person reads it. */
export function reportText(report: IntakeReport, dryRun: boolean): string {
  const n = (count: number): string => count.toLocaleString('en');
  const lines = [
    `${n(report.records)} ${report.records === 1 ? 'record' : 'records'} read in ${report.seconds.toFixed(1)} s (${n(Math.round(report.records / Math.max(report.seconds, 0.001)))} a second)${dryRun ? '; nothing was written' : ''}`,
    `  ${n(report.taken)} taken, ${n(report.known)} known already, ${n(report.edited)} edited, ${n(report.differing)} differing, ${n(report.refused)} refused`,
  ];
  if (report.linksMade + report.linksAwaited > 0) {
    lines.push(
      `  links between records: ${n(report.linksMade)} made, ${n(report.linksAwaited)} wait for a record that has not come`,
    );
  }
  const remarks = Object.values(report.remarks);
  if (remarks.length > 0) lines.push('Remarks on records that were taken:');
  for (const { count, examples } of remarks.sort((a, b) => b.count - a.count)) {
    lines.push(`  ${n(count)} × e.g. ${problemText(examples[0]!)}`);
  }
  if (report.problems.length > 0) lines.push('Not taken:');
  for (const problem of report.problems.slice(0, 20)) lines.push(`  ${problem.code} ${problemText(problem)}`);
  const more = report.problems.length - 20 + report.problemsLeftOut;
  if (more > 0) lines.push(`  and ${n(more)} more: --report writes them all to a file`);
  return `${lines.join('\n')}\n`;
}

/** Where and what; a message that begins with the place does not say it twice. */
function problemText({ place, message }: IntakeReport['problems'][number]): string {
  const said = `${place.key}, field ${place.field}: `;
  return `${placeText(place)}: ${message.startsWith(said) ? message.slice(said.length) : message}`;
}

function placeText(place: IntakeReport['problems'][number]['place']): string {
  const parts = [
    place.file,
    place.record === undefined ? undefined : `record ${place.record}`,
    place.key === undefined ? undefined : `"${place.key}"`,
    place.field === undefined ? undefined : `field ${place.field}`,
  ];
  return oneLine(parts.filter(part => part !== undefined).join(', '));
}
