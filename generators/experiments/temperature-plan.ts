import type { Range } from '../apparatus/bench.ts';
import { type TableValue, warming } from '../apparatus/materials.ts';
import { round } from '../quantities/written.ts';
import type { Ask, NominalWire } from './ask.ts';
import { type BridgePlan, nominalResistance, planResistance } from './bridge-plan.ts';
import type { Plan } from './plan.ts';

/** The null point has to move by ten divisions of the scale at least, or its reading drowns the change; common practice, no source. */
const LEAST_SHIFT = 1;

/** A table value with its temperature coefficient. */
export type WithAlpha = TableValue & { alpha: NonNullable<TableValue['alpha']> };

/** The value whose α the sheet names: that of the order's source where it gives one that is not nought, else that which the wire is made from. */
export function alphaValue({ accepted, made }: NominalWire): WithAlpha | undefined {
  return [accepted, made].find((value): value is WithAlpha => value.alpha !== undefined && Number(value.alpha.value) !== 0);
}

/** Nominal resistance of the coil in Ω at a temperature in °C. */
export function coilResistance(wire: NominalWire, celsius: number): number {
  const { alpha } = wire.made;
  return nominalResistance(wire) * (alpha ? warming(Number(alpha.value), alpha.celsius, wire.made.celsius, celsius) : 1);
}

/** Settings with which the null point stays inside the window from the coldest bath to the hottest; one of them is used throughout. */
export function settingsForAll(ask: Ask): BridgePlan {
  const [cold, hot] = ask.bench.bath.heated.map((celsius) => coilResistance(ask.wire, celsius)) as [number, number];
  const [inCold, inHot] = [cold, hot].map((X) => new Set(planResistance(ask, X).usable.map(({ R }) => R))) as [Set<string>, Set<string>];
  const middle = planResistance(ask, (cold + hot) / 2);
  return { ...middle, usable: middle.usable.filter(({ R }) => inCold.has(R) && inHot.has(R)) };
}

export function planCoil(ask: Ask): Plan {
  const weak = tooWeak(ask.wire, ask.bench.bath.heated);
  return { balances: [{ of: 'the coil between the bath temperatures', ...settingsForAll(ask), wanted: 1 }], unfit: weak === undefined ? [] : [weak] };
}

/** Why a wire's resistance changes too little with the temperature to be seen; nothing where it does not. At mid-wire the null point moves by a quarter of the wire times the relative change. */
function tooWeak(wire: NominalWire, [cold, hot]: Range): string | undefined {
  const change = Math.abs(coilResistance(wire, hot) / coilResistance(wire, cold) - 1);
  const shift = 25 * change;
  if (shift >= LEAST_SHIFT && alphaValue(wire)) return undefined;
  const percent = round(100 * change, { decimals: 1 }, 'even');
  return `the resistance of ${wire.made.material} changes by ${percent} % between ${cold} and ${hot} °C, which moves the null point by ${round(shift, { decimals: 1 }, 'even')} cm, too little to be read well; alloys for resistors are made so. Take a pure metal, such as 5 m of copper, SWG 36, or 2 m of iron, SWG 32`;
}
