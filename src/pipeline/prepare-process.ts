import { enableCompileCache } from 'node:module';
import type { ApartMessage, ApartOrder } from './prepare-apart.ts';

enableCompileCache();
const { prepare } = await import('./prepare.ts');
const { preparationOf } = await import('./prepare-apart.ts');

function say(message: ApartMessage): Promise<void> {
  return new Promise((resolve) => {
    if (process.send === undefined) resolve();
    else
      process.send(message, () => {
        resolve();
      });
  });
}

// One order a process: it is over when the answer is given, and its memory with it.
process.once('message', (order: ApartOrder) => {
  prepare({
    ...order,
    onProgress: (done, total) => {
      void say({ says: 'progress', of: 'entries', done, total });
    },
    onPhoto: (done, total) => {
      void say({ says: 'progress', of: 'photos', done, total });
    },
  })
    .then((prepared) => say({ says: 'done', preparation: preparationOf(prepared) }))
    .catch((error: unknown) => say({ says: 'failed', reason: error instanceof Error ? error.message : String(error) }))
    .finally(() => {
      process.disconnect();
    });
});
