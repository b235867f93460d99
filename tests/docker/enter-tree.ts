import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

export interface Entering {
  readonly command: readonly string[];
  readonly workdir?: string;
  /** `uid:gid`, without any capability and without a way to gain one; else root. */
  readonly user?: string;
  readonly environment?: Readonly<Record<string, string>>;
  /** Whether the tree can be written. */
  readonly writable?: boolean;
  /** Folder of the host that lies at `/data`. */
  readonly data?: string;
}

/** What of this system stands for the system of the image. */
const lent = ['usr', 'etc', 'proc', 'dev'];

/** Mounts and network are this command's own and end with it; its process is that of the command in the end. */
const enter = `
  root=$1 node=$2 writable=$3 data=$4; shift 4
  ip link set lo up
  mount --bind "$root" "$root"
  for each in ${lent.join(' ')}; do mount --rbind "/$each" "$root/$each"; done
  mount --bind "$node" "$root/opt/node"
  mount -t tmpfs -o mode=1777,size=64m tmpfs "$root/tmp"
  if [ -n "$data" ]; then mount --bind "$data" "$root/data"; fi
  if [ -z "$writable" ]; then mount -o remount,bind,ro "$root"; fi
  exec chroot "$root" "$@"
`;

/** Why trees cannot be entered here; `undefined` where they can. */
export function whyNoTree(): string | undefined {
  try {
    execFileSync(
      'unshare',
      ['--mount', '--net', 'sh', '-euc', 'ip link set lo up; command -v chroot setpriv nsenter'],
      {
        stdio: 'pipe',
      },
    );
    return undefined;
  } catch (error) {
    const told = (error as { stderr?: Buffer }).stderr?.toString().trim();
    return `no mounts and network of one's own here: ${told === undefined || told === '' ? error : told}`;
  }
}

/** An empty tree with places for what is lent to it. */
export function prepareTree(root: string): void {
  for (const name of [...lent, 'tmp', 'opt']) mkdirSync(join(root, name), { recursive: true });
  for (const name of ['bin', 'sbin', 'lib', 'lib64']) symlinkSync(`usr/${name}`, join(root, name));
  writeFileSync(join(root, 'opt/node'), '');
  chmodSync(root, 0o755);
}

/** The program and the arguments that run a command with the tree as its root, on a network of its own. */
export function enterTree(root: string, entering: Entering): readonly [string, readonly string[]] {
  const { writable = false, data = '' } = entering;
  const settings = [root, process.execPath, writable ? 'writable' : '', data];
  return ['unshare', ['--mount', '--net', 'sh', '-euc', enter, 'enter', ...settings, ...asUser(entering)]];
}

/** The same beside a process that is in the tree, as an engine asks for health. */
export function joinTree(pid: number, entering: Entering): readonly [string, readonly string[]] {
  return ['nsenter', [`--target=${pid}`, '--mount', '--net', '--root', '--', ...asUser(entering)]];
}

function asUser({ command, user = '0:0', environment = {}, workdir = '/' }: Entering): readonly string[] {
  const [uid, gid] = user.split(':');
  const closed = user === '0:0' ? [] : ['--inh-caps=-all', '--bounding-set=-all', '--no-new-privs'];
  const variables = Object.entries(environment).map(([name, value]) => `${name}=${value}`);
  return [
    ...['setpriv', `--reuid=${uid}`, `--regid=${gid}`, '--clear-groups', ...closed],
    ...['env', '-i', '-C', workdir, 'PATH=/opt:/usr/bin:/bin:/usr/sbin', ...variables],
    ...command,
  ];
}
