import { runCommand } from './run-command.ts';

// A reader such as "head" may leave in the middle; that ends the writing and is no fault.
for (const stream of [process.stdout, process.stderr]) {
  stream.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
}

const stopping = new AbortController();
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'] as const) {
  process.once(signal, () => {
    stopping.abort();
    // What does not run until it is stopped ends here; a server has closed by then.
    setTimeout(() => process.exit(signal === 'SIGINT' ? 130 : 143), 2000).unref();
  });
}

process.exitCode = await runCommand(process.argv.slice(2), {
  stdout: process.stdout,
  stderr: process.stderr,
  cwd: process.cwd(),
  env: process.env,
  stop: stopping.signal,
});
