/** Whether so many marks can be made up of questions, `counts[m]` of them with m marks, each taken once at most. */
export function reaches(marks: number, counts: readonly number[]): boolean {
  return reachable(marks, counts)[marks] === 1;
}

/** For every number of marks up to `most`: 1 where it can be made up, else 0. */
export function reachable(most: number, counts: readonly number[]): Uint8Array {
  const can = new Uint8Array(most + 1);
  can[0] = 1;
  for (let m = 1; m < counts.length; m++) {
    const count = counts[m] ?? 0;
    if (count > 0) addQuestions(can, m, count);
  }
  return can;
}

/** Questions of m marks beside the others; the fewest of them are counted on from sum to sum. */
function addQuestions(can: Uint8Array, m: number, count: number): void {
  const taken = new Uint16Array(can.length);
  for (let sum = m; sum < can.length; sum++) {
    if (can[sum] === 1 || can[sum - m] === 0 || taken[sum - m]! >= count) continue;
    can[sum] = 1;
    taken[sum] = taken[sum - m]! + 1;
  }
}
