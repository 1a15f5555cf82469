import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { didYouMean } from '../markdown/nearest-name.ts';
import { PROJECT_ROOT } from '../pipeline/project-root.ts';
import { OPTIONS, runWith, usageOf, type Command } from './command.ts';
import { DONE, FAILED, WRONG_USAGE, type CommandStreams } from './streams.ts';
import { WrongUsage } from './wrong-usage.ts';

// Loaded when named: a word of help need not wait for the site's machinery.
const COMMANDS: readonly { readonly name: string; readonly load: () => Promise<Command> }[] = [
  { name: 'new', load: async () => (await import('./new.ts')).newEntry },
  { name: 'check', load: async () => (await import('./check.ts')).check },
  { name: 'build', load: async () => (await import('./build.ts')).build },
  { name: 'dev', load: async () => (await import('./dev.ts')).dev },
  { name: 'demo', load: async () => (await import('./demo.ts')).demo },
  { name: 'explain', load: async () => (await import('./explain.ts')).explain },
  { name: 'offers', load: async () => (await import('./offers.ts')).offers },
  { name: 'schema', load: async () => (await import('./schema.ts')).schema },
];

/** Runs one command line. Never throws; the exit code is 0 when done, 1 with errors, 2 for wrong usage. */
export async function runCommand(argv: readonly string[], streams: CommandStreams): Promise<number> {
  try {
    return await dispatch(argv, streams);
  } catch (error) {
    const isUsage = error instanceof WrongUsage;
    const message = error instanceof Error ? error.message : String(error);
    streams.stderr.write(isUsage ? `${message}.\n`.replace(/([.?])\.\n$/, '$1\n') : `seamline failed: ${message}\n`);
    return isUsage ? WRONG_USAGE : FAILED;
  }
}

async function dispatch(argv: readonly string[], streams: CommandStreams): Promise<number> {
  const [name, ...rest] = argv;
  if (name === undefined) {
    streams.stderr.write(await overview());
    return WRONG_USAGE;
  }
  if (name === '--version' || name === '-v') return say(`${version()}\n`, streams);
  if (name === 'help' || name === '--help' || name === '-h')
    return say(rest[0] === undefined ? await overview() : await helpOn(rest[0]), streams);
  const command = await commandNamed(name);
  if (rest.includes('--help') || rest.includes('-h')) return say(await helpOn(name), streams);
  return runWith(command, rest, streams);
}

function say(words: string, { stdout }: CommandStreams): number {
  stdout.write(words);
  return DONE;
}

async function commandNamed(name: string): Promise<Command> {
  const found = COMMANDS.find((command) => command.name === name);
  if (found !== undefined) return found.load();
  const names = COMMANDS.map((command) => command.name);
  throw new WrongUsage(`There is no command "${name}"${didYouMean(name, names) || `; there are ${names.join(', ')}`}`);
}

async function overview(): Promise<string> {
  const commands = await Promise.all(COMMANDS.map((command) => command.load()));
  const lines = commands.map((command) => `  ${`${command.name} ${command.operand}`.padEnd(28)}${command.meaning}`);
  return [
    'seamline: teardowns of power adapters, checked, computed, published',
    '',
    ...lines,
    '',
    'seamline help <command> says what a command takes.',
    '',
  ].join('\n');
}

async function helpOn(name: string): Promise<string> {
  const command = await commandNamed(name);
  const options = command.options.map((option) => `  ${OPTIONS[option].written.padEnd(28)}${OPTIONS[option].meaning}`);
  return [usageOf(command), '', command.meaning, ...options, ''].join('\n');
}

function version(): string {
  const stated: unknown = JSON.parse(readFileSync(join(PROJECT_ROOT, 'package.json'), 'utf8'));
  return typeof stated === 'object' && stated !== null && 'version' in stated ? String(stated.version) : 'unknown';
}
