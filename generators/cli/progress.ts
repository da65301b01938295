/** Tells on standard error how far a long work is: one line that moves on a terminal, a line a kind elsewhere. */
export interface Progress {
  start(what: string, total: number): void;
  step(): void;
}

export function progress(stream: NodeJS.WriteStream = process.stderr): Progress {
  let what = '';
  let total = 0;
  let done = 0;
  const show = () => {
    if (stream.isTTY) stream.write(`\r${what} ${done}/${total}${done === total ? '\n' : ''}`);
    else if (done === total) stream.write(`${what} ${done}/${total}\n`);
  };
  return {
    start(next, count) {
      [what, total, done] = [next, count, 0];
    },
    step() {
      done++;
      show();
    },
  };
}

/** Says nothing. */
export const silent: Progress = { start: () => undefined, step: () => undefined };
