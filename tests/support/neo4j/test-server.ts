/** A server that tests may fill and empty as they like. */
export interface TestServer {
  /** Address without a name or password. */
  readonly uri: string;
  readonly user: string;
  readonly password: string;
}

/** A server that was started for a run of tests. */
export interface StartedServer extends TestServer {
  stop(): Promise<void>;
}

/** The version that is tried, of the container and of the artifacts. */
export const testedVersion = '5.26.30';
