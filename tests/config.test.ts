import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { inspect } from 'node:util';
import { afterAll, describe, expect, test } from 'vitest';
import { readConfig } from '../src/config.ts';
import { PlatestemmaError } from '../src/errors.ts';

const folder = mkdtempSync(join(tmpdir(), 'platestemma-config-'));
afterAll(() => rmSync(folder, { recursive: true }));

const secret = 'correct horse/battery staple';

describe('where the store is', () => {
  const storeOf = (given: string) => readConfig({ PLATESTEMMA_STORE: given }).store;

  test('a file is found from the working folder', () => expect(storeOf('a.store')).toBe(resolve('a.store')));

  test.each(['neo4j://store:7687', 'neo4j+s://store', 'bolt+ssc://store:7687'])('%s is kept as it is', address =>
    expect(storeOf(address)).toBe(address),
  );
});

describe('the password of the store', () => {
  const fromFile = (text: string) => readConfig({ PLATESTEMMA_STORE_PASSWORD_FILE: secretFile(text) }).storePassword;

  test('there is none unless it is set', () => expect(readConfig({}).storePassword).toBeUndefined());

  test('is the variable', () => expect(readConfig({ PLATESTEMMA_STORE_PASSWORD: secret }).storePassword).toBe(secret));

  test.each(['', '\n', '\r\n'])('is the line of the file, without its end %j', end =>
    expect(fromFile(secret + end)).toBe(secret),
  );

  test('blanks belong to it', () => expect(fromFile(` ${secret} \n`)).toBe(` ${secret} `));

  test('a file that is not there is named, with what the system says', () => {
    const file = join(folder, 'none');
    expect(refusal({ PLATESTEMMA_STORE_PASSWORD_FILE: file })).toMatchObject({
      code: 'STORE_UNREACHABLE',
      message: `PLATESTEMMA_STORE_PASSWORD_FILE, ${JSON.stringify(file)}: expected a file that can be read, the system says ENOENT`,
      place: { file },
    });
  });

  test('a folder is no file', () =>
    expect(refusal({ PLATESTEMMA_STORE_PASSWORD_FILE: folder }).message).toMatch(/the system says EISDIR$/));

  test.each(['', '\n', `\n${secret}\n`])('%j is refused: its first line is empty', text => {
    const error = refusal({ PLATESTEMMA_STORE_PASSWORD_FILE: secretFile(text) });
    expect(error.message).toMatch(/expected the password on one line, came an empty first line$/);
  });

  test('two lines are refused, and none is told', () => {
    const error = refusal({ PLATESTEMMA_STORE_PASSWORD_FILE: secretFile(`${secret}\n${secret}\n`) });
    expect(error.message).toMatch(/expected the password on one line, came more than one line$/);
    expect(inspect(error, { depth: 9 })).not.toContain(secret);
  });

  test('set twice is refused, and neither is told', () => {
    const error = refusal({
      PLATESTEMMA_STORE_PASSWORD: secret,
      PLATESTEMMA_STORE_PASSWORD_FILE: secretFile(`${secret}\n`),
    });
    expect(error.message).toBe('expected PLATESTEMMA_STORE_PASSWORD_FILE or PLATESTEMMA_STORE_PASSWORD, came both');
    expect(inspect(error, { depth: 9 })).not.toContain(secret);
  });

  test('what prints the configuration does not print it', () => {
    const config = readConfig({ PLATESTEMMA_STORE_PASSWORD: secret });
    expect(inspect(config, { depth: 9 })).not.toContain(secret);
  });
});

function secretFile(text: string): string {
  const file = join(folder, 'secret');
  writeFileSync(file, text);
  return file;
}

function refusal(env: Parameters<typeof readConfig>[0]): PlatestemmaError {
  try {
    readConfig(env).storePassword;
  } catch (error) {
    if (error instanceof PlatestemmaError) return error;
    throw error;
  }
  throw new Error('the password was taken');
}
