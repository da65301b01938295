import type { Ask } from '../../generators/experiments/ask.ts';
import { resistivity } from '../../generators/experiments/resistivity.ts';
import { streams } from '../../generators/random.ts';

/** The 64 bits of a number in hex: no two numbers are written alike, not even 0 and −0. */
function bits(number: number): string {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, number);
  return view.getBigUint64(0).toString(16).padStart(16, '0');
}

/** Sets of readings with what lay behind them, each as a text; the same text only where every bit is the same. */
export function setsInBits(asks: readonly Ask[], count: number): string[] {
  return Array.from({ length: count }, (_, i) => {
    const observed = resistivity.observe(asks[i % asks.length]!, streams('bits').within('set', i));
    const truth = Object.entries(observed?.truth ?? {}).map(([name, value]) => [name, bits(value)]);
    return JSON.stringify({ ...observed, truth });
  });
}
