import { createServer } from 'node:net';

/** Whether a TCP port of a host can be listened on now. Port 0 always can. */
export function portIsFree(port, host) {
  return new Promise((resolve) => {
    const probe = createServer();
    probe.once('error', () => resolve(false));
    probe.listen({ port, host, exclusive: true }, () => probe.close(() => resolve(true)));
  });
}

/** The first free port at or after `from`, looking at no more than `tries`; `null` where none is. */
export async function firstFreePort(from, host = '127.0.0.1', tries = 50) {
  for (let port = from; port < from + tries && port <= 65_535; port += 1) {
    if (await portIsFree(port, host)) return port;
  }
  return null;
}
