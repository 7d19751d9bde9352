const SIGNALS = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

export interface Hold {
  /** The signal that asked the run to end, if one came. */
  readonly raised: NodeJS.Signals | undefined;
  /** Lets signals through again, and passes on the one that came. */
  release(): void;
}

/** Keeps Ctrl-C and its like waiting, so that a folder can be left tidy first. A second one goes through at once. */
export function holdSignals(): Hold {
  let raised: NodeJS.Signals | undefined;
  const release = () => {
    for (const signal of SIGNALS) process.off(signal, note);
    if (raised !== undefined) process.kill(process.pid, raised);
  };
  const note = (signal: NodeJS.Signals) => {
    if (raised !== undefined) release();
    raised = signal;
  };
  for (const signal of SIGNALS) process.on(signal, note);
  return {
    get raised() {
      return raised;
    },
    release,
  };
}
