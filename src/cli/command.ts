import { parseArgs } from 'node:util';
import { didYouMean } from '../markdown/nearest-name.ts';
import type { CommandStreams } from './streams.ts';
import { WrongUsage } from './wrong-usage.ts';

/** Names of the options that commands take. */
export type OptionName = 'content' | 'out' | 'base' | 'format' | 'port' | 'no-serve' | 'power' | 'revision' | 'cable';

interface OptionDeclaration {
  readonly type: 'string' | 'boolean';
  /** As the help shows it. */
  readonly written: string;
  readonly meaning: string;
}

/** Every option, once. */
export const OPTIONS: Readonly<Record<OptionName, OptionDeclaration>> = {
  content: { type: 'string', written: '--content DIR', meaning: 'folder with teardowns/ and site.yaml (content)' },
  out: { type: 'string', written: '--out DIR', meaning: 'folder to publish, replaced as a whole (dist)' },
  base: { type: 'string', written: '--base /sub/', meaning: 'path under which the site is published (/)' },
  format: { type: 'string', written: '--format text|json|sarif', meaning: 'how findings are printed (text)' },
  port: { type: 'string', written: '--port N', meaning: 'port to serve on (4400, or a free one)' },
  power: { type: 'string', written: '--power W', meaning: 'rated power of the port, such as "65 W" (what its offers reach)' },
  revision: { type: 'string', written: '--revision N', meaning: 'revision of USB PD that the source claims, such as 3.1 (not known)' },
  cable: { type: 'string', written: '--cable KIND', meaning: 'cable of the reading: unmarked, marked, EPR or captive (not known)' },
  'no-serve': { type: 'boolean', written: '--no-serve', meaning: 'build only' },
};

/** Options as given, not yet judged. */
export interface GivenOptions {
  readonly text: (name: OptionName) => string | undefined;
  readonly flag: (name: OptionName) => boolean;
}

/** One command of the program. */
export interface Command {
  readonly name: string;
  /** What follows the name, as the help shows it: "<slug>", or nothing; one that ends in "…" takes all words that follow, as one text. */
  readonly operand: string;
  readonly meaning: string;
  readonly options: readonly OptionName[];
  /** @returns the exit code */
  readonly run: (operand: string, options: GivenOptions, streams: CommandStreams) => Promise<number>;
}

/**
 * Runs a command on the rest of the command line.
 *
 * @throws WrongUsage for an option or operand that the command does not take
 */
export async function runWith(command: Command, rest: readonly string[], streams: CommandStreams): Promise<number> {
  const options = Object.fromEntries(command.options.map((name) => [name, { type: OPTIONS[name].type }]));
  const { values, positionals } = parsed(command, rest, options);
  const takesAll = command.operand.endsWith('…');
  const wanted = command.operand === '' ? 0 : takesAll ? Infinity : 1;
  if (positionals.length > wanted)
    throw new WrongUsage(`"${positionals[wanted] ?? ''}" is one word too many; the command is: ${usageOf(command)}`);
  if (positionals.length === 0 && command.operand.startsWith('<'))
    throw new WrongUsage(`${command.operand} is missing; the command is: ${usageOf(command)}`);
  const given: GivenOptions = {
    text: (name) => (typeof values[name] === 'string' ? values[name] : undefined),
    flag: (name) => values[name] === true,
  };
  return command.run(takesAll ? positionals.join(' ') : (positionals[0] ?? ''), given, streams);
}

function parsed(
  command: Command,
  rest: readonly string[],
  options: Record<string, { type: 'string' | 'boolean' }>,
): { readonly values: Readonly<Record<string, unknown>>; readonly positionals: readonly string[] } {
  try {
    return parseArgs({ args: [...rest], options, allowPositionals: true, strict: true });
  } catch (error) {
    throw new WrongUsage(inOurWords(command, error));
  }
}

function inOurWords(command: Command, error: unknown): string {
  const message = error instanceof Error ? error.message : '';
  const code = error instanceof Error && 'code' in error ? error.code : '';
  const written = /'(-{1,2}[^'\s=]+)/.exec(message)?.[1] ?? '';
  if (code === 'ERR_PARSE_ARGS_UNKNOWN_OPTION') {
    const names = command.options.map((name) => `--${name}`);
    const takes = names.length === 0 ? 'takes no options' : `takes ${names.join(', ')}`;
    return `"${command.name}" has no option ${written}${didYouMean(written, names)}${names.length === 0 || didYouMean(written, names) === '' ? `; it ${takes}` : ''}`;
  }
  const declared = command.options.map((name) => OPTIONS[name]).find((option) => option.written.split(' ')[0] === written);
  return declared === undefined
    ? `The options cannot be read; the command is: ${usageOf(command)}`
    : `${written} must be written as ${declared.written}`;
}

/** The command with all it takes, on one line. */
export function usageOf(command: Command): string {
  const options = command.options.map((name) => `[${OPTIONS[name].written}]`);
  return ['seamline', command.name, command.operand, ...options].filter((part) => part !== '').join(' ');
}
