import { afterEach, beforeEach, expect, vi } from 'vitest';

/** A warning on the console fails the test in which it is given. */
const levels = ['warn', 'error'] as const;

beforeEach(() => {
  for (const level of levels) vi.spyOn(console, level);
});

afterEach(() => {
  const given = levels.flatMap((level) => vi.mocked(console[level]).mock.calls.map((words) => words.join(' ')));
  for (const level of levels) vi.mocked(console[level]).mockRestore();
  expect(given, 'warnings on the console').toEqual([]);
});
