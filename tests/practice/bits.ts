import type { Experiment } from '../../generators/experiments/experiment.ts';
import type { Kit } from '../../generators/practice/kit.ts';
import { makeSet } from '../../generators/practice/make-set.ts';
import { setCode } from '../../generators/practice/set-code.ts';

/** The 64 bits of a number in hex: no two numbers are written alike, not even 0 and −0. */
function bits(number: number): string {
  const view = new DataView(new ArrayBuffer(8));
  view.setFloat64(0, number);
  return view.getBigUint64(0).toString(16).padStart(16, '0');
}

/** Practice sets with what lay behind them, each as a text; the same text only where every bit is the same. */
export function setsInBits(experiment: Experiment, kit: Kit, codes: readonly number[]): string[] {
  return codes.map((number) => {
    const { sheet, truth, wires } = makeSet(experiment, kit, setCode(number));
    return JSON.stringify({ form: sheet.form, readings: sheet.readings, finished: sheet.finished, wires, truth: Object.entries(truth).map(([name, value]) => [name, bits(value)]) });
  });
}
