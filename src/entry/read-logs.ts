import type { LogFile } from './entry.ts';
import type { PortNames } from './read-port-list.ts';
import type { EntrySource } from './schema.ts';

/** Reads the logs that stand beside the entry; their rows are read by whoever has the files. Ports stay as written unless a naming is given. */
export function readLogs(source: EntrySource['logs'], portOf: PortNames = (text) => text ?? null): readonly LogFile[] {
  return Object.entries(source ?? {}).map(([id, value]) => {
    const fields = typeof value === 'string' ? { file: value } : value;
    return {
      id,
      file: fields.file,
      columns: fields.columns ?? {},
      decimal: fields.decimal ?? 'point',
      port: portOf(fields.port, ['logs', id, 'port']),
      line: fields.line ?? null,
      ambient: fields.ambient ?? null,
      events: fields.events ?? {},
      instrument: fields.instrument ?? null,
      method: fields.method ?? null,
      note: fields.note ?? null,
      path: ['logs', id],
    };
  });
}
