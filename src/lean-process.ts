/**
 * V8 lets a heap grow for as long as the machine has memory, and the system's allocator keeps an arena a thread: an
 * intake of millions of records would take twice the memory that it needs. Its threads keep the machine busy by
 * themselves: more of them that tidy or compile only stand in their way.
 */
const flags = ['--max-old-space-size=80', '--max-semi-space-size=8', '--single-threaded-gc', '--v8-pool-size=0'];
const environment = { MALLOC_ARENA_MAX: '1' };

/**
 * Starts the program anew in the same process with bounds on its memory, for work as long as a library is; a user who
 * has set bounds of his own keeps them. Does nothing where the system cannot replace a process.
 */
export function startLean(): void {
  const given = [...process.execArgv, process.env['NODE_OPTIONS'] ?? ''].join(' ');
  if (process.execve === undefined || process.platform === 'win32' || given.includes('--max-old-space-size')) return;
  process.execve(process.execPath, [process.execPath, ...process.execArgv, ...flags, ...process.argv.slice(1)], {
    ...environment,
    ...process.env,
  } as NodeJS.ProcessEnv);
}
