import { constants } from 'node:os';

const STOPS = ['SIGHUP', 'SIGINT', 'SIGTERM'] as const;
const BROKEN_PIPE = 128 + constants.signals.SIGPIPE;

/**
 * A stop from outside (Ctrl-C, a closed terminal, a system that goes down) becomes an ordinary exit, so that what
 * is half made is cleared away; the exit code is 128 and the number of the signal, as shells count.
 */
export function stopInOrder(): void {
  for (const signal of STOPS) process.once(signal, () => process.exit(128 + constants.signals[signal]));
  // The reader of the output has gone: `slidewire plan order.yaml | head`.
  process.stdout.once('error', (error: NodeJS.ErrnoException) => {
    if (error.code === 'EPIPE') process.exit(BROKEN_PIPE);
    throw error;
  });
}
