import type { Ask, NominalWire } from '../experiments/ask.ts';
import type { Conventions } from '../sheets/sheet.ts';

/** What a page needs to make sets of one experiment: an order made ready, without what only Node can read. */
export interface Kit {
  experiment: string;
  /** Wires that a set is dealt from, in the order of the order. */
  wires: readonly NominalWire[];
  /** The rest of what is asked of the bench. */
  ask: Omit<Ask, 'wire' | 'others'>;
  /** How sets are worked and judged; readings that no form of a set has do no harm. */
  conventions: Conventions;
}
