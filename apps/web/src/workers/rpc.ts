/**
 * Calls and pushes over one message port: what the screens' thread and the kennel's worker say to each other.
 * Calls are answered in any order; a push needs no answer. Nothing is retried: both ends live and die together.
 */

/** The part of `Worker` and of a worker's own scope that is needed here. */
export interface Port {
  postMessage(message: unknown): void;
  addEventListener(type: 'message', listen: (event: { readonly data: unknown }) => void): void;
}

/** Functions by name, each taking one argument; what comes back is awaited. */
export type Calls = { readonly [name: string]: (argument: never) => unknown };

/** The same functions as seen from the other end. */
export type Remote<C extends Calls> = {
  readonly [K in keyof C]: (...argument: Parameters<C[K]>) => Promise<Awaited<ReturnType<C[K]>>>;
};

type Message =
  | { readonly to: 'call'; readonly id: number; readonly name: string; readonly argument: unknown }
  | { readonly to: 'answer'; readonly id: number; readonly value: unknown }
  | { readonly to: 'fault'; readonly id: number; readonly message: string }
  | { readonly to: 'push'; readonly value: unknown };

/** Answers the calls that arrive at `port`; returns how to push. A throw is handed to the caller as an error. */
export function serveCalls<Push>(port: Port, calls: Calls): (value: Push) => void {
  const answer = async (id: number, name: string, argument: unknown): Promise<void> => {
    try {
      const call = calls[name];
      if (call === undefined) throw new TypeError(`call: no "${name}" here`);
      port.postMessage({ to: 'answer', id, value: await call(argument as never) } satisfies Message);
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      port.postMessage({ to: 'fault', id, message } satisfies Message);
    }
  };
  port.addEventListener('message', ({ data }) => {
    const message = data as Message;
    if (message.to === 'call') void answer(message.id, message.name, message.argument);
  });
  return (value) => port.postMessage({ to: 'push', value } satisfies Message);
}

/** Calls the other end of `port`, and hears its pushes. */
export function callThrough<C extends Calls, Push>(port: Port, hear: (push: Push) => void): Remote<C> {
  const waiting = new Map<number, { resolve: (value: unknown) => void; reject: (error: Error) => void }>();
  let lastId = 0;
  port.addEventListener('message', ({ data }) => {
    const message = data as Message;
    if (message.to === 'push') return hear(message.value as Push);
    if (message.to === 'call') return;
    const asked = waiting.get(message.id);
    waiting.delete(message.id);
    if (message.to === 'answer') asked?.resolve(message.value);
    else asked?.reject(new Error(message.message));
  });
  const call = (name: string, argument: unknown): Promise<unknown> =>
    new Promise((resolve, reject) => {
      lastId += 1;
      waiting.set(lastId, { resolve, reject });
      port.postMessage({ to: 'call', id: lastId, name, argument } satisfies Message);
    });
  return new Proxy({} as Remote<C>, {
    get: (_target, name) =>
      name === 'then' ? undefined : (argument: unknown) => call(String(name), argument),
  });
}
