import neo4j from 'neo4j-driver';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { Connection } from '../../../src/store/neo4j/connection.ts';
import { describeWithNeo4j } from '../../support/neo4j/describe-with-neo4j.ts';
import { inDatabase, neo4jServer } from '../../support/neo4j/empty-neo4j-store.ts';

const endless = 'UNWIND range(1, 1000000000000) AS x WITH x WHERE x % 7 = 8 RETURN count(x)';

let connection: Connection;

function connect(connections: number): Connection {
  const { uri, user, password } = neo4jServer();
  const driver = neo4j.driver(uri, neo4j.auth.basic(user, password), {
    disableLosslessIntegers: true,
    maxConnectionPoolSize: connections,
    connectionAcquisitionTimeout: 300,
  });
  return new Connection(driver, uri, undefined);
}

/** How many questions of that text the server works at. */
async function running(): Promise<number> {
  const text = 'SHOW TRANSACTIONS YIELD currentQuery WHERE currentQuery STARTS WITH $text RETURN count(*)';
  return (await inDatabase(text, { text: endless.slice(0, 40) }))[0]![0] as number;
}

async function expectEnded(): Promise<void> {
  await expect.poll(running, { timeout: 2000, interval: 20 }).toBe(0);
}

async function elapsed(asked: Promise<unknown>): Promise<number> {
  const begun = performance.now();
  await asked.catch(() => undefined);
  return performance.now() - begun;
}

describeWithNeo4j('a question to a Neo4j server', () => {
  beforeEach(async () => {
    connection = connect(2);
    await connection.question(5000)('RETURN 1');
    expect(await running()).toBe(0);
  });

  afterEach(() => connection.close());

  test('past its limit is told so near it, and the server ends it', async () => {
    const asked = connection.question(500)(endless);
    const time = elapsed(asked);
    await expect.poll(running, { timeout: 480, interval: 10 }).toBe(1);
    await expect(asked).rejects.toMatchObject({ code: 'STORE_TIMEOUT', retriable: true });
    expect(await time).toBeGreaterThanOrEqual(490);
    expect(await time).toBeLessThan(560);
    await expectEnded();
    expect(await connection.question(5000)('RETURN 7')).toEqual([[7]]);
  });

  test('of one who goes is ended at once, with the reason', async () => {
    const asker = new AbortController();
    const asked = connection.question(10_000, asker.signal)(endless);
    const time = elapsed(asked);
    setTimeout(() => asker.abort(new Error('gone')), 100);
    await expect(asked).rejects.toThrow('gone');
    expect(await time).toBeLessThan(160);
    await expectEnded();
  });

  test('that runs when the store is closed is ended', async () => {
    const asked = connection.question(10_000)(endless);
    const failed = expect(asked).rejects.toMatchObject({ code: 'STORE_UNREACHABLE' });
    await connection.close();
    await failed;
    await expectEnded();
  });

  test('for which no connection comes free is told so', async () => {
    const others = [1, 2].map(() => connection.question(1500)(endless));
    const failed = Promise.all(others.map(asked => expect(asked).rejects.toMatchObject({ code: 'STORE_TIMEOUT' })));
    await expect(connection.question(10_000)('RETURN 1')).rejects.toMatchObject({
      code: 'STORE_BUSY',
      retriable: true,
    });
    await failed;
  });
});
