import { oneLine } from '../domain/text/one-line.ts';
import type { IntakeProblem } from '../intake/intention.ts';

/** Most problems that a report keeps whole; the rest are counted. */
const problemsKept = 10_000;
/** Most remarks kept as examples of each kind. */
const examplesKept = 5;

/** What became of every record of an intake: records = taken + known + edited + differing + refused. */
export interface IntakeReport {
  records: number;
  /** New in the graph. */
  taken: number;
  /** There already, unchanged, or the same record under another source. */
  known: number;
  /** There already; what changed in the source was changed here. */
  edited: number;
  /** There already and changed by somebody here since: left as it is, and reported. */
  differing: number;
  /** Not taken, each with its reason among the problems. */
  refused: number;
  /** Links to other records: made, or waiting for a record that has not come. */
  linksMade: number;
  linksAwaited: number;
  /** Number of the last change set written. */
  changeSet: number;
  seconds: number;
  /** Name of the run: all its change sets bear it. */
  batch: string;
  /** The source was read to its end. */
  complete: boolean;
  /** Refused and differing records. */
  problems: IntakeProblem[];
  problemsLeftOut: number;
  /** Remarks on records that were taken, by kind: how many, and the first few. */
  remarks: Record<string, { count: number; examples: IntakeProblem[] }>;
}

export function emptyReport(batch: string): IntakeReport {
  return {
    records: 0,
    taken: 0,
    known: 0,
    edited: 0,
    differing: 0,
    refused: 0,
    linksMade: 0,
    linksAwaited: 0,
    changeSet: 0,
    seconds: 0,
    batch,
    complete: false,
    problems: [],
    problemsLeftOut: 0,
    remarks: {},
  };
}

export function addProblem(report: IntakeReport, problem: IntakeProblem): void {
  if (report.problems.length < problemsKept) report.problems.push(onOneLine(problem));
  else report.problemsLeftOut++;
}

export function addRemark(report: IntakeReport, remark: IntakeProblem): void {
  const kind = `${remark.code} ${remark.place.field ?? ''}`.trim();
  report.remarks[kind] ??= { count: 0, examples: [] };
  const kept = report.remarks[kind];
  kept.count++;
  if (kept.examples.length < examplesKept) kept.examples.push(onOneLine(remark));
}

/** Messages quote what came: that may have line ends, and is a part of the file until it is copied. */
function onOneLine(problem: IntakeProblem): IntakeProblem {
  return structuredClone({ ...problem, message: oneLine(problem.message) });
}
