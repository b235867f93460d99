import { readFileSync } from 'node:fs';

/** Peak resident set of a process so far in megabytes, from the system; 0 where it does not tell or the process is gone. */
export function peakMemory(pid: number): number {
  try {
    return Number(/VmHWM:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0) / 1024;
  } catch {
    return 0;
  }
}
