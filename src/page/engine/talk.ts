import type { Message } from './protocol.ts';

/** The end of a line to the other side: a worker, or the page that began it. */
export interface Line {
  post(message: Message): void;
  listen(take: (message: Message) => void): void;
}

// biome-ignore lint/suspicious/noExplicitAny: the calls of the other side, whatever they take
type Calls = { [name: string]: (...args: any[]) => Promise<unknown> };

/** Answers the calls of the other side by `mine`, and gives the calls that the other side answers. */
export function talkOver<Theirs extends object>(line: Line, mine: object): Theirs {
  const waiting = new Map<number, { done(value: unknown): void; failed(error: Error): void }>();
  let last = 0;
  line.listen(async (message) => {
    if ('answer' in message) {
      const call = waiting.get(message.answer);
      waiting.delete(message.answer);
      if ('error' in message) call?.failed(new Error(message.error));
      else call?.done(message.value);
      return;
    }
    try {
      const value = await (mine as Calls)[message.name]!(...message.args);
      line.post({ answer: message.call, value });
    } catch (error) {
      line.post({
        answer: message.call,
        error: error instanceof Error ? (error.stack ?? error.message) : String(error),
      });
    }
  });
  return new Proxy({} as Theirs, {
    get:
      (_, name) =>
      (...args: unknown[]) =>
        new Promise((done, failed) => {
          last += 1;
          waiting.set(last, { done, failed });
          line.post({ call: last, name: String(name), args });
        }),
  });
}
