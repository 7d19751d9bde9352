const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

export interface Hold {
  /** The signal that asked the run to end, if one came. */
  readonly raised: NodeJS.Signals | undefined;
  /** Lets signals through again. One that came ends the process as it would have, once what is left to say is said. */
  release(): void;
}

/**
 * Keeps Ctrl-C and its like waiting, so that things can be left tidy first. A second one goes through at once.
 * @param heard called when the first comes; a thread that is busy hears none
 */
export function holdSignals(heard = (): void => undefined): Hold {
  let raised: NodeJS.Signals | undefined;
  const off = () => {
    for (const signal of SIGNALS) process.off(signal, note);
  };
  const note = (signal: NodeJS.Signals) => {
    if (raised === undefined) {
      raised = signal;
      heard();
    } else {
      off();
      process.kill(process.pid, signal);
    }
  };
  for (const signal of SIGNALS) process.on(signal, note);
  return {
    get raised() {
      return raised;
    },
    release() {
      off();
      // A shell sees 128 and the number of the signal (POSIX, Shell Command Language, 2.8.2), and knows that it was not the program that failed.
      if (raised !== undefined) process.once('beforeExit', () => process.kill(process.pid, raised));
    },
  };
}
