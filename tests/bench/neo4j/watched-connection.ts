import neo4j from 'neo4j-driver';
import { type Ask, Connection, type Row, type Values } from '../../../src/store/neo4j/connection.ts';

export interface Statement {
  readonly text: string;
  readonly values: Values;
}

/** A connection of our engine that tells what it asks: so that the driver alone can be asked the same. */
export class WatchedConnection extends Connection {
  /** Statements since this was emptied: those of each change in a list of their own, as those of questions are. */
  readonly changes: Statement[][] = [];
  readonly questions: Statement[] = [];

  constructor(uri: string) {
    super(neo4j.driver(uri, undefined, { disableLosslessIntegers: true, fetchSize: 10_000 }), uri, undefined);
  }

  override question(limit: number, signal?: AbortSignal): Ask {
    return noting(this.questions, super.question(limit, signal));
  }

  override write<T>(work: (run: Ask) => Promise<T>): Promise<T> {
    return super.write(run => {
      const made: Statement[] = [];
      this.changes.push(made);
      return work(noting(made, run));
    });
  }
}

function noting(list: Statement[], ask: Ask): Ask {
  return <R extends Row>(text: string, values: Values = {}) => {
    list.push({ text, values });
    return ask<R>(text, values);
  };
}
