import { execFileSync } from 'node:child_process';

/** Mounts of a command's own, which end with it. A user who is not root becomes one among his own processes. */
const unshare = [
  'unshare',
  ...(process.getuid?.() === 0 ? [] : ['--user', '--map-root-user']),
  ...['--mount', 'sh', '-euc'],
] as const;

/** Why a command cannot have mounts of its own here; `undefined` where it can. */
export function whyNoMounts(): string | undefined {
  try {
    const [program, ...args] = unshare;
    execFileSync(program, [...args, 'mount -t tmpfs none /tmp'], { stdio: 'pipe' });
    return undefined;
  } catch (error) {
    const told = (error as { readonly stderr?: Buffer }).stderr?.toString().trim();
    return `no mounts of one's own here: ${told === undefined || told === '' ? String(error) : told}`;
  }
}

/** A command that finds an empty disk of so many bytes at a folder. */
export function onSmallDisk(folder: string, bytes: number, command: readonly string[]): [string, ...string[]] {
  const [program, ...args] = unshare;
  const script = `mount -t tmpfs -o size=${bytes} none "$1"; shift; exec "$@"`;
  return [program, ...args, script, 'sh', folder, ...command];
}

/** A command that finds a folder, and all that is in it, on a disk that cannot be written to. */
export function onReadOnlyDisk(folder: string, command: readonly string[]): [string, ...string[]] {
  const [program, ...args] = unshare;
  const script = 'mount --bind "$1" "$1"; mount -o remount,bind,ro "$1"; shift; exec "$@"';
  return [program, ...args, script, 'sh', folder, ...command];
}
