import type { Course } from './course.ts';

/**
 * The most days that links alone put between two variables; -Infinity if none lead from one to the other. Only ways
 * within one component are looked for: elsewhere the days of the two say as much. No loop may have a positive sum.
 */
export function heaviestWay({ arcs, components: { of } }: Course, from: number, to: number): number {
  if (of[from] !== of[to]) return -Infinity;
  const days = new Map([[from, 0]]);
  const queue = [from];
  const waiting = new Set(queue);
  for (const variable of queue) {
    waiting.delete(variable);
    for (const arc of arcs.outOf.subarray(arcs.outOfStart[variable], arcs.outOfStart[variable + 1])) {
      const target = arcs.to[arc]!;
      const reached = days.get(variable)! + arcs.weight[arc]!;
      if (of[target] !== of[from] || reached <= (days.get(target) ?? -Infinity)) continue;
      days.set(target, reached);
      if (!waiting.has(target)) queue.push(target);
      waiting.add(target);
    }
  }
  return days.get(to) ?? -Infinity;
}
