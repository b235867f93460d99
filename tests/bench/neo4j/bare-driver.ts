import neo4j, { type Driver } from 'neo4j-driver';
import { defaultConventions } from '../../../src/domain/conventions/conventions.ts';
import { recordKindNames } from '../../../src/domain/model/kinds.ts';
import { foldTokens, sortKey } from '../../../src/domain/text/fold.ts';
import { askStore } from '../../../src/questions/ask-store.ts';
import type { ReachAsked } from '../../../src/questions/questions.ts';
import type { Values } from '../../../src/store/neo4j/connection.ts';
import { Neo4jStore } from '../../../src/store/neo4j/neo4j-store.ts';
import { quoted } from '../../../src/store/neo4j/search-words.ts';
import { WatchedConnection } from './watched-connection.ts';

/** The driver alone, with a statement a question; what comes is read into plain values. */
export class BareDriver {
  readonly #driver: Driver;
  readonly #uri: string;

  constructor(uri: string) {
    this.#uri = uri;
    this.#driver = neo4j.driver(uri, undefined, {
      disableLosslessIntegers: true,
      fetchSize: 10_000,
      notificationFilter: { minimumSeverityLevel: 'OFF' },
    });
  }

  /** Without a transaction of several messages: that would cost a second way there and back. */
  async ask(text: string, values: Values): Promise<unknown[][]> {
    const session = this.#driver.session({ defaultAccessMode: 'READ' });
    const { records } = await session.run(text, values);
    await session.close();
    return records.map(record => [...record.values()]);
  }

  async time(text: string, values: Values): Promise<number> {
    const begun = performance.now();
    await this.ask(text, values);
    return performance.now() - begun;
  }

  /** For questions about reach, the windows that our engine comes to look into, best first. */
  async windowsOf(questions: readonly ReachAsked[]): Promise<readonly Values[]> {
    const connection = new WatchedConnection(this.#uri);
    const store = new Neo4jStore(connection, 60_000);
    const { reach } = askStore(store);
    const found: Values[] = [];
    for (const asked of questions) {
      connection.questions.length = 0;
      await reach(asked);
      const looked = connection.questions.map(({ values }) => values).filter(values => 'windows' in values);
      found.push({
        windows: looked.flatMap(values => values['windows'] as string[]),
        after: looked.flatMap(values => values['after'] as string[]),
        limit: neo4j.int(asked.page.first),
      });
    }
    await store.close();
    return found;
  }

  close(): Promise<void> {
    return this.#driver.close();
  }
}

/** Values of the search for all words of a text, the last one begun: a page of so many, and one more. */
export function searchValues(text: string, first: number): Values {
  const whole = sortKey(text);
  const words = [...new Set(foldTokens(text))];
  return {
    kinds: recordKindNames,
    whole,
    end: `${whole}\u{10ffff}`,
    query: [...words.slice(0, -1).map(word => `+${quoted(word)}`), `+${words.at(-1)}*`].join(' '),
    room: neo4j.int(first + 1),
    cap: neo4j.int(defaultConventions.get('limit.search')),
  };
}
