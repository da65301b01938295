import { type Alternative, type OfferedGauge, alternatives } from '../experiments/alternatives.ts';
import type { Ask } from '../experiments/ask.ts';
import type { Experiment } from '../experiments/experiment.ts';
import type { BridgePlan, Setting } from '../experiments/bridge-plan.ts';
import { round } from '../quantities/written.ts';
import type { Tables } from '../sheets/tables.ts';

/** Gauges that can be bought, to be offered. */
export function offeredGauges({ gauges }: Tables): OfferedGauge[] {
  return Object.entries(gauges['SWG']?.diameters ?? {}).map(([number, mm]) => ({ gauge: `SWG ${number}`, diameter: Number(mm) }));
}

/** Why a wire cannot be used, and what would do, each with the settings and null points that it would give. */
export function refusal(ask: Ask, { id, plan }: Experiment, gauges: readonly OfferedGauge[]): string {
  const { X, usable } = plan(ask);
  const [low, high] = ask.window;
  const found = usable.length === 0 ? 'no setting of the box balances' : `only ${settingsInWords(usable)} balance${usable.length === 1 ? 's' : ''}`;
  const why = `its resistance is about ${three(X)} Ω, and ${found} between ${low} and ${high} cm, where ${ask.rows} rows are wanted`;
  const offered = alternatives(ask, gauges, plan).filter(({ change }) => change !== 'interchange' || id !== 'interchange');
  const offers = offered.map((alternative) => `\n    ${offerInWords(alternative, ask.rows)}`);
  return offers.length === 0 ? `${why}; no single change to wire, box or window helps, so take another wire` : `${why}. What would do:${offers.join('')}`;
}

function offerInWords(alternative: Alternative, rows: number): string {
  switch (alternative.change) {
    case 'length':
      return `a length of ${alternative.centimetres} cm: ${table(alternative.plan, rows)}`;
    case 'diameter':
      return `a wire of ${alternative.gauge}: ${table(alternative.plan, rows)}`;
    case 'length and diameter':
      return `${alternative.centimetres} cm of ${alternative.gauge}: ${table(alternative.plan, rows)}`;
    case 'box':
      return `a box with the plugs ${alternative.plugs.join(' ')} Ω: ${table(alternative.plan, rows)}`;
    case 'window':
      return `a window of ${alternative.window.join('–')} cm: ${table(alternative.plan, rows)}`;
    case 'interchange':
      return `the same R in either gap (experiment: interchange, with half as many rows): ${alternative.settings
        .slice(0, Math.max(3, Math.ceil(rows / 2)))
        .map(({ R, direct, interchanged }) => `${R} Ω at ${one(direct)} and ${one(interchanged)} cm`)
        .join(', ')}`;
  }
}

/** As many settings as rows are wanted, spread over the usable ones. */
export function table({ X, usable }: BridgePlan, rows: number): string {
  const chosen = Array.from({ length: rows }, (_, row) => usable[Math.floor(((row + 0.5) * usable.length) / rows)]!);
  return `X about ${three(X)} Ω, R ${settingsInWords(chosen)}`;
}

function settingsInWords(settings: readonly Setting[]): string {
  return settings.map(({ R, l }) => `${R} Ω (null at ${one(l)} cm)`).join(', ');
}

export const one = (value: number) => round(value, { decimals: 1 }, 'even');
export const three = (value: number) => round(value, { figures: 3 }, 'even');
