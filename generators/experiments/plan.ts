import type { BridgePlan } from './bridge-plan.ts';

/** One resistance that the bridge has to balance. */
export interface Balance extends BridgePlan {
  /** What it is, where there are several: 'both in series'. */
  of?: string;
  /** How many settings are needed. */
  wanted: number;
}

/** What an experiment can do with the apparatus that is asked for. */
export interface Plan {
  /** Everything to be balanced; nothing where no resistance box is set. */
  balances: Balance[];
  /** Why the apparatus does not do for other reasons, each with what would. */
  unfit: string[];
}

/** Whether the experiment can be done. */
export function isFit({ balances, unfit }: Plan): boolean {
  return unfit.length === 0 && balances.every(({ usable, wanted }) => usable.length >= wanted);
}

/** The plan of an experiment that balances one resistance, in as many rows as are asked for. */
export function planOfOne(plan: BridgePlan, rows: number): Plan {
  return { balances: [{ ...plan, wanted: rows }], unfit: [] };
}
