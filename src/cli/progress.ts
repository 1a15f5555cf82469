import type { TextSink } from './streams.ts';

/** One line that is written over and over on a terminal, and never in a pipe. */
export interface Progress {
  readonly say: (words: string) => void;
  /** Takes the line away. */
  readonly clear: () => void;
}

const REWRITE = '\r\u001b[K';

/** Progress for this sink. */
export function progressOn(sink: TextSink): Progress {
  if (sink.isTTY !== true) return { say: () => undefined, clear: () => undefined };
  let shown = false;
  return {
    say(words) {
      shown = true;
      sink.write(REWRITE + words);
    },
    clear() {
      if (shown) sink.write(REWRITE);
      shown = false;
    },
  };
}
