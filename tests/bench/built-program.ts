import { existsSync } from 'node:fs';

/** The program as it is installed: what `npm run build` makes, which the commands that measure call first. */
export function builtProgram(): string {
  const { pathname } = new URL('../../dist/main.js', import.meta.url);
  if (!existsSync(pathname)) throw new Error(`expected the built program at ${pathname}: npm run build`);
  return pathname;
}
