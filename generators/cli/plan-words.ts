import { type Alternative, type OfferedGauge, alternatives } from '../experiments/alternatives.ts';
import type { Ask } from '../experiments/ask.ts';
import type { Experiment } from '../experiments/experiment.ts';
import type { Setting } from '../experiments/bridge-plan.ts';
import type { Balance, Plan } from '../experiments/plan.ts';
import { round } from '../quantities/written.ts';
import type { Tables } from '../sheets/tables.ts';

/** Gauges that can be bought, to be offered. */
export function offeredGauges({ gauges }: Tables): OfferedGauge[] {
  return Object.entries(gauges['SWG']?.diameters ?? {}).map(([number, mm]) => ({ gauge: `SWG ${number}`, diameter: Number(mm) }));
}

/** Why wires cannot be used, and what would do, each with the settings and null points that it would give. */
export function refusal(ask: Ask, { id, plan }: Experiment, gauges: readonly OfferedGauge[]): string {
  const { balances, unfit } = plan(ask);
  if (unfit.length > 0) return unfit.join('; ');
  const lacking = balances.filter(({ usable, wanted }) => usable.length < wanted);
  const why = lacking.map((balance) => lackInWords(balance, ask.window)).join('; ');
  const offered = alternatives(ask, gauges, plan).filter(({ change }) => change !== 'interchange' || id !== 'interchange');
  const offers = offered.map((alternative) => `\n    ${offerInWords(alternative, ask.rows)}`);
  return offers.length === 0 ? `${why}; no single change to wire, box or window helps, so take another wire` : `${why}. What would do:${offers.join('')}`;
}

function lackInWords({ of, X, usable, wanted }: Balance, [low, high]: Ask['window']): string {
  const found = usable.length === 0 ? 'no setting of the box balances' : `only ${settingsInWords(usable)} balance${usable.length === 1 ? 's' : ''}`;
  return `${of === undefined ? 'its resistance' : `the resistance of ${of}`} is about ${three(X)} Ω, and ${found} between ${low} and ${high} cm, where ${wanted} ${wanted === 1 ? 'row is' : 'rows are'} wanted`;
}

function offerInWords(alternative: Alternative, rows: number): string {
  switch (alternative.change) {
    case 'length':
      return `a length of ${alternative.centimetres} cm: ${planTable(alternative.plan)}`;
    case 'diameter':
      return `a wire of ${alternative.gauge}: ${planTable(alternative.plan)}`;
    case 'length and diameter':
      return `${alternative.centimetres} cm of ${alternative.gauge}: ${planTable(alternative.plan)}`;
    case 'box':
      return `a box with the plugs ${alternative.plugs.join(' ')} Ω: ${planTable(alternative.plan)}`;
    case 'window':
      return `a window of ${alternative.window.join('–')} cm: ${planTable(alternative.plan)}`;
    case 'interchange':
      return `the same R in either gap (experiment: interchange, with half as many rows): ${alternative.settings
        .slice(0, Math.max(3, Math.ceil(rows / 2)))
        .map(({ R, direct, interchanged }) => `${R} Ω at ${one(direct)} and ${one(interchanged)} cm`)
        .join(', ')}`;
  }
}

/** As many settings for each balance as are wanted, spread over the usable ones. */
export function planTable({ balances }: Plan): string {
  return balances.map(balanceInWords).join('; ');
}

function balanceInWords({ of, X, usable, wanted }: Balance): string {
  const chosen = Array.from({ length: wanted }, (_, row) => usable[Math.floor(((row + 0.5) * usable.length) / wanted)]!);
  return `${of === undefined ? 'X' : of} about ${three(X)} Ω, R ${settingsInWords(chosen)}`;
}

function settingsInWords(settings: readonly Setting[]): string {
  return settings.map(({ R, l }) => `${R} Ω (null at ${one(l)} cm)`).join(', ');
}

export const one = (value: number) => round(value, { decimals: 1 }, 'even');
export const three = (value: number) => round(value, { figures: 3 }, 'even');

/** Results as a terminal can show them; others are called by their name in the words of the experiment. */
const SYMBOLS: Record<string, string> = {
  X: 'X', meanX: 'X', rho: 'ρ', meanAlpha: 'α', meanBeta: 'β', meanXc: 'X corrected', g: 'slope', b: 'intercept', X0: 'X at 0 °C', alphaRef: 'α',
};

/** What a result of the experiment is called, by the names of its quantities in content. */
export const resultName = (id: string, names: Record<string, string> = {}) => SYMBOLS[id] ?? names[id] ?? id;
