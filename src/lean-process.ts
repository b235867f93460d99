/**
 * V8 lets a heap grow for as long as the machine has memory, and the system's allocator keeps an arena a thread: an
 * intake of millions of records would take twice the memory that it needs. Its threads keep the machine busy by
 * themselves: more than one that tidies or compiles only stands in their way. And where objects made at one place in the
 * program have lived long, V8 makes them old from the start: rows of a batch then keep all that they name for as long.
 */
const flags = ['--max-semi-space-size=16', '--v8-pool-size=1', '--no-allocation-site-pretenuring'];
const environment = { MALLOC_ARENA_MAX: '4' };

/**
 * Starts the program anew in the same process with bounds on its memory, for work as long as a library is; a user who
 * has set bounds of his own keeps them. Does nothing where the system cannot replace a process.
 * @param megabytes for what the thread that works keeps
 */
export function startLean(megabytes: number): void {
  const given = [...process.execArgv, process.env['NODE_OPTIONS'] ?? ''].join(' ');
  if (process.execve === undefined || process.platform === 'win32' || given.includes('--max-old-space-size')) return;
  const bounds = [`--max-old-space-size=${megabytes}`, ...flags];
  process.execve(process.execPath, [process.execPath, ...process.execArgv, ...bounds, ...process.argv.slice(1)], {
    ...environment,
    ...process.env,
  } as NodeJS.ProcessEnv);
}

/**
 * Megabytes for what the thread of a command keeps, where it works as long as a library is; undefined for other commands.
 * Who copies a history holds whole change sets, of whatever size they are, and two stores; who takes tables in that were
 * edited, all that was changed.
 */
export function heapFor([command = '', ...args]: readonly string[]): number | undefined {
  if (['transfer', 'backup', 'restore'].includes(command)) return 512;
  if (command === 'export') return args.includes('--history') ? 512 : 80;
  if (command !== 'intake') return undefined;
  return args.includes('table') && !args.some(arg => arg.startsWith('--map')) ? 512 : 128;
}
