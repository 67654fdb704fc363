let port: Worker | null = null;

/** The kennel's worker, started when it is first asked for. */
export function startWorker(): Worker {
  port ??= new Worker(new URL('../workers/kennel-worker.ts', import.meta.url), { type: 'module' });
  return port;
}
