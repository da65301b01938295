import { UserMistake } from '../../generators/mistake.ts';

/** The message of the UserMistake that `run` throws, line by line; anything else that is thrown goes on. */
export function linesOf(run: () => unknown): string[] {
  try {
    run();
  } catch (error) {
    if (error instanceof UserMistake) return error.message.split('\n');
    throw error;
  }
  throw new Error('nothing was refused');
}
