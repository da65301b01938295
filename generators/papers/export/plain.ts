import { round } from '../../quantities/written.ts';

/** A number for another program: six figures, '0.00000049' never but '4.9e-7'. */
export function plain(value: number): string {
  return String(Number(round(value, { figures: 6 }, 'even')));
}
