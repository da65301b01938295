import type { StudentMarks } from './mark-class.ts';
import { sum } from './feedback.ts';

/** Share of its marks that each answer earned, among the sheets that are marked. */
export function sharesEarned(marked: readonly StudentMarks[]): number[] {
  const [first] = marked;
  if (!first) return [];
  return first.answers.map(({ column }, i) => {
    const full = sum(column.marks) * marked.length;
    return full === 0 ? 0 : marked.reduce((total, { answers }) => total + sum(answers[i]!.earned), 0) / full;
  });
}

/** How many students show each slip, the commonest first; of several that explain a value each counts. Unexplained values come under ''. */
export function slipCounts(marked: readonly StudentMarks[]): { slip: string; students: number }[] {
  const counts = new Map<string, number>();
  for (const { answers } of marked) {
    const wrong = answers.filter(({ verdict }) => verdict === 'wrong');
    const shown = wrong.flatMap(({ explanations }) => (explanations.length === 0 ? [''] : explanations.flatMap(({ slip, with: second }) => [slip, ...(second ? [second.slip] : [])])));
    for (const slip of new Set(shown)) counts.set(slip, (counts.get(slip) ?? 0) + 1);
  }
  return [...counts].map(([slip, students]) => ({ slip, students })).sort((a, b) => b.students - a.students);
}

/** Mean and median of the totals. */
export function middles(marked: readonly StudentMarks[]): { mean: number; median: number } {
  const totals = marked.map(({ total }) => total).sort((a, b) => a - b);
  const half = totals.length / 2;
  const median = (totals[Math.ceil(half) - 1]! + totals[Math.floor(half)]!) / 2;
  return { mean: totals.reduce((a, b) => a + b, 0) / totals.length, median };
}

/** The totals counted in equal steps from 0 to the full marks, ten at most, whole marks each. */
export function spread(marked: readonly StudentMarks[], full: number): { counts: number[]; edges: number[] } {
  const step = Math.max(1, Math.ceil(full / 10));
  const steps = Math.max(1, Math.ceil(full / step));
  const counts = Array.from({ length: steps }, () => 0);
  // The last step holds the full marks too.
  for (const { total } of marked) counts[Math.min(steps - 1, Math.floor(total / step))]!++;
  return { counts, edges: Array.from({ length: steps + 1 }, (_, i) => i * step) };
}
