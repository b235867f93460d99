import type { CommandContext } from '@stricli/core';
import type { Commands } from '../questions/commands.ts';
import type { World } from '../questions/ports.ts';
import type { Questions } from '../questions/questions.ts';
import type { GraphStore } from '../store/graph-store.ts';

/** An open store with all that can be asked of it. */
export interface Desk {
  readonly store: GraphStore;
  readonly questions: Questions;
  readonly commands: Commands;
}

export interface Served {
  readonly url: string;
  stop(): Promise<void>;
}

/** What commands need of the world; composed in one place, given by tests in another. */
export interface CliContext extends CommandContext {
  readonly process: {
    readonly stdout: { write(text: string): void };
    readonly stderr: { write(text: string): void; readonly isTTY?: boolean };
    readonly stdin: AsyncIterable<Uint8Array>;
  };
  readonly world: World;
  /** Who changes what nobody else is named for. */
  readonly who: string;
  /** Opens a store, making the file if it is not there and `create` is set. */
  openDesk(file: string | undefined, options?: { readonly create?: boolean }): Promise<Desk>;
  serve(desk: Desk, options: { readonly host: string; readonly port: number }): Promise<Served>;
  /** Claims a store for serving: @throws STORE_BUSY if another process serves it. @returns ends the claim */
  claimServing(file: string | undefined): Promise<() => void>;
  /** File of a store; undefined for one that a server keeps. */
  storeFile(name: string | undefined): string | undefined;
  /** Removes a store in a file, which nobody has open, if it is there. */
  removeStore(file: string): Promise<void>;
  /**
   * Puts a store in a file, which nobody has open, in the place of another, which is kept where that is said.
   * @throws STORE_BUSY if another process has that open
   */
  replaceStore(fresh: string, file: string, kept: string | undefined): Promise<void>;
  /** Path the store would be opened at. */
  storePath(file: string | undefined): string;
  /** Makes the process end with 1, though its answer was printed: refused input, or faults found. */
  partial(): void;
  /** Resolves when the process is asked to stop. */
  stopped(): Promise<void>;
}
