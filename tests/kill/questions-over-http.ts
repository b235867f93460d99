import { setTimeout } from 'node:timers/promises';

/** What a library's users ask, over records of which nothing is known here but that there are some. */
const documents = [
  '{ search(text: "history", first: 40) { nodes { id label } cut } }',
  '{ search(text: "edinb", kinds: [PLACE], first: 10) { nodes { id label } } }',
  '{ reach(at: { placeName: "Delft" }, by: "1850", first: 30) { counts { inEveryCase inSomeCases inNoCase contradictory } editions { nodes { edition { id title } verdict } } } }',
];

const pageOf = (id: string) =>
  `{ node(id: ${JSON.stringify(id)}) { id ... on Edition { title imprint imprints: claims(kinds: [IMPRINT]) { nodes { id ... on Imprint { role place { id label } } } } } } }`;

/** Codes that tell who asks that the store is away or slow. */
const clear: ReadonlySet<unknown> = new Set(['STORE_UNREACHABLE', 'STORE_TIMEOUT', 'STORE_BUSY']);

/** Questions with their right answers, as text. */
export type Answers = ReadonlyMap<string, string>;

interface Answer {
  readonly data?: { readonly search?: { readonly nodes: readonly { readonly id: string }[] } };
  readonly errors?: readonly { readonly message: string; readonly extensions?: { readonly code?: string } }[];
}

/** The questions with the answers of a server that nothing happens to. */
export async function answersOf(url: string): Promise<Answers> {
  const answers = new Map<string, string>();
  for (const query of documents) answers.set(query, JSON.stringify((await ask(url, query)).data));
  const found = (await ask(url, documents[0]!)).data?.search?.nodes ?? [];
  const ids = found.map(({ id }) => id).filter(id => id.startsWith('edition-'));
  for (const query of ids.slice(0, 5).map(pageOf)) answers.set(query, JSON.stringify((await ask(url, query)).data));
  if (answers.size < documents.length + 5) throw new Error(`expected records about history, came ${found.length}`);
  return answers;
}

/** Asks again and again, several at once, and counts what it is told. */
export class Asker {
  readonly #url: string;
  readonly #answers: Answers;
  #ended = false;
  #loops: readonly Promise<void>[] = [];
  right = 0;
  /** How often each code was told. */
  readonly told: Record<string, number> = {};
  /** Answers that were neither right nor a clear code. */
  readonly wrong: string[] = [];

  constructor(url: string, answers: Answers) {
    this.#url = url;
    this.#answers = answers;
  }

  begin(atOnce: number): void {
    this.#loops = Array.from({ length: atOnce }, (_, i) => this.#loop(i));
  }

  /** Resolves when each question has been answered rightly once more. @throws if that takes longer than so many milliseconds */
  async untilAllRight(patience: number): Promise<void> {
    const end = performance.now() + patience;
    for (const query of this.#answers.keys()) {
      while (!(await this.#ask(query))) {
        if (performance.now() > end)
          throw new Error(`no right answer ${patience} ms after the store was back: ${query}`);
        await setTimeout(50);
      }
    }
  }

  async end(): Promise<void> {
    this.#ended = true;
    await Promise.all(this.#loops);
  }

  async #loop(first: number): Promise<void> {
    const queries = [...this.#answers.keys()];
    for (let at = first; !this.#ended; at++) {
      await this.#ask(queries[at % queries.length]!);
      await setTimeout(30);
    }
  }

  /** @returns whether the answer was right */
  async #ask(query: string): Promise<boolean> {
    try {
      const { data, errors } = await ask(this.#url, query);
      if (errors === undefined) return this.#compare(query, JSON.stringify(data));
      for (const { message, extensions } of errors) {
        const code = extensions?.code ?? '';
        this.told[code] = (this.told[code] ?? 0) + 1;
        if (!clear.has(code)) this.wrong.push(`${code}: ${message}`);
      }
    } catch (error) {
      this.wrong.push(String(error));
    }
    return false;
  }

  #compare(query: string, data: string): boolean {
    const isRight = data === this.#answers.get(query);
    if (isRight) this.right++;
    else this.wrong.push(`${query}: ${data.slice(0, 300)}`);
    return isRight;
  }
}

async function ask(url: string, query: string): Promise<Answer> {
  const headers = { 'content-type': 'application/json', accept: 'application/graphql-response+json' };
  const answer = await fetch(url, { method: 'POST', headers, body: JSON.stringify({ query }) });
  return (await answer.json()) as Answer;
}
