import { readFileSync } from 'node:fs';
import { homedir, userInfo } from 'node:os';
import { join, resolve } from 'node:path';
import { PlatestemmaError } from './errors.ts';

type Environment = Readonly<Partial<Record<string, string>>>;

/** What can be set from outside, read once; a secret only when it is asked for. */
export interface Config {
  /** File of the store, or the address of the server that keeps it (`neo4j://host:7687`), as it was given. */
  readonly store: string;
  /**
   * Password for a store that is kept by a server; `undefined` where none is set.
   *
   * @throws STORE_UNREACHABLE if its file cannot be read, is empty or holds more than a line: the store cannot be opened
   *   then; INPUT_INVALID if it is set twice. The message never holds the password
   */
  readonly storePassword?: string | undefined;
  /** Who changes what nobody else is named for: as the system knows the user, if it is not set. */
  readonly who: string;
  /** Longest time a question may take, in milliseconds. */
  readonly questionLimit: number;
}

/**
 * From the environment: PLATESTEMMA_STORE, PLATESTEMMA_STORE_PASSWORD_FILE or PLATESTEMMA_STORE_PASSWORD,
 * PLATESTEMMA_WHO, PLATESTEMMA_QUESTION_LIMIT (milliseconds).
 */
export function readConfig(env: Environment): Config {
  const limit = Number(env['PLATESTEMMA_QUESTION_LIMIT'] ?? 10_000);
  return Object.freeze({
    store: storeOf(env),
    // Read late: a command that works on a file needs no password, and what prints the configuration prints none.
    get storePassword() {
      return storePassword(env);
    },
    who: env['PLATESTEMMA_WHO'] ?? userName(),
    questionLimit: Number.isFinite(limit) && limit > 0 ? limit : 10_000,
  });
}

function userName(): string {
  try {
    return userInfo().username;
  } catch {
    // A user of whom the system knows no more than a number.
    return 'a user without a name';
  }
}

function storeOf(env: Environment): string {
  const given = env['PLATESTEMMA_STORE'] ?? join(dataFolder(env), 'platestemma', 'graph.store');
  return /^[a-z][a-z0-9+]+:\/\//.test(given) ? given : resolve(given);
}

function storePassword(env: Environment): string | undefined {
  const file = env['PLATESTEMMA_STORE_PASSWORD_FILE'];
  const plain = env['PLATESTEMMA_STORE_PASSWORD'];
  if (file === undefined) return plain;
  if (plain !== undefined) {
    throw new PlatestemmaError(
      'INPUT_INVALID',
      'expected PLATESTEMMA_STORE_PASSWORD_FILE or PLATESTEMMA_STORE_PASSWORD, came both',
    );
  }
  return passwordIn(file);
}

/** The one line of a file, without its end. */
function passwordIn(file: string): string {
  const [password = '', ...rest] = readSecret(file).split(/\r?\n/);
  if (password !== '' && rest.every(line => line === '')) return password;
  const came = password === '' ? 'an empty first line' : 'more than one line';
  throw refused(file, `expected the password on one line, came ${came}`);
}

function readSecret(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (cause) {
    throw refused(file, `expected a file that can be read, the system says ${(cause as NodeJS.ErrnoException).code}`);
  }
}

function refused(file: string, message: string): PlatestemmaError {
  const told = `PLATESTEMMA_STORE_PASSWORD_FILE, ${JSON.stringify(file)}: ${message}`;
  return new PlatestemmaError('STORE_UNREACHABLE', told, { place: { file } });
}

/** Where the system keeps a user's data: XDG base directories, or what macOS and Windows have for it. */
function dataFolder(env: Environment): string {
  if (process.platform === 'darwin') return join(homedir(), 'Library', 'Application Support');
  if (process.platform === 'win32') return env['LOCALAPPDATA'] ?? join(homedir(), 'AppData', 'Local');
  return env['XDG_DATA_HOME'] ?? join(homedir(), '.local', 'share');
}
