import { readFileSync } from 'node:fs';

/** Peak resident set of a process so far in megabytes, from the system; 0 where it does not tell or the process is gone. */
export function peakMemory(pid: number): number {
  return memoryOf(pid, /VmHWM:\s+(\d+)/);
}

/** The same as it is now. */
export function heldMemory(pid: number): number {
  return memoryOf(pid, /VmRSS:\s+(\d+)/);
}

function memoryOf(pid: number, line: RegExp): number {
  try {
    return Number(line.exec(readFileSync(`/proc/${pid}/status`, 'utf8'))?.[1] ?? 0) / 1024;
  } catch {
    return 0;
  }
}
