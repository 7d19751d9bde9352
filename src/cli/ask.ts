import { createInterface } from 'node:readline';

export interface Asker {
  /** Puts a question and waits for a line. `undefined` when there are no more lines to come, or Ctrl-C was pressed. */
  ask(question: string): Promise<string | undefined>;
  /** True when Ctrl-C ended it. */
  readonly stopped: boolean;
  close(): void;
}

/** Asks on standard error and reads standard input, line by line, whether somebody types or a file is fed in. */
export function openAsker(
  input: NodeJS.ReadStream = process.stdin,
  output: NodeJS.WriteStream = process.stderr,
): Asker {
  const typed = input.isTTY === true && output.isTTY === true;
  const lines = createInterface({ input, output, terminal: typed });
  const waiting: string[] = [];
  let take: ((line: string | undefined) => void) | undefined;
  let ended = false;
  let stopped = false;
  lines.on('line', (line) => {
    if (take === undefined) waiting.push(line);
    else take(line);
    take = undefined;
  });
  lines.on('SIGINT', () => {
    stopped = true;
    lines.close();
  });
  lines.on('close', () => {
    ended = true;
    take?.(undefined);
    take = undefined;
  });
  return {
    async ask(question) {
      if (typed) {
        lines.setPrompt(question);
        if (!ended) lines.prompt();
      } else {
        output.write(`${question}\n`);
      }
      const line = waiting.shift();
      if (line !== undefined || ended) return line;
      return new Promise((resolve) => {
        take = resolve;
      });
    },
    get stopped() {
      return stopped;
    },
    close: () => lines.close(),
  };
}
