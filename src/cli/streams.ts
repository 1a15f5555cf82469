/** Where a command writes; `isTTY` decides on colour and progress. */
export interface TextSink {
  readonly write: (text: string) => unknown;
  readonly isTTY?: boolean | undefined;
}

/** Everything a command gets from outside. */
export interface CommandStreams {
  readonly stdout: TextSink;
  readonly stderr: TextSink;
  /** Folder that relative paths start from. */
  readonly cwd: string;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Ends commands that run until they are stopped. */
  readonly stop?: AbortSignal;
}

/** Exit codes: done, findings with errors, wrong usage. */
export const DONE = 0;
export const FAILED = 1;
export const WRONG_USAGE = 2;
