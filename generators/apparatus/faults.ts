import type { Random } from '../random.ts';
import type { Bench } from './bench.ts';
import type { Bridge, Side, Terminals } from './bridge.ts';
import { draw } from './draw.ts';

type Fault = (bridge: Bridge, bench: Bench, random: Random) => Bridge;

const gap =
  (side: Side, change: (terminals: Terminals, bench: Bench, random: Random) => Partial<Terminals>): Fault =>
  (bridge, bench, random) => {
    const terminals = bridge.terminals[side];
    return { ...bridge, terminals: { ...bridge.terminals, [side]: { ...terminals, ...change(terminals, bench, random) } } };
  };

const open = () => ({ inSeries: Infinity });
const shorted = () => ({ across: 0 });
const loose = ({ inSeries }: Terminals, { bridge }: Bench, random: Random) => ({
  inSeries: inSeries + draw(bridge.looseJoint, random),
});

const faults = {
  'left gap open': gap('left', open),
  'right gap open': gap('right', open),
  'left gap shorted': gap('left', shorted),
  'right gap shorted': gap('right', shorted),
  'left joint loose': gap('left', loose),
  'right joint loose': gap('right', loose),
  'cell reversed': ({ cell, ...rest }) => ({ ...rest, cell: { ...cell, emf: -cell.emf } }),
  'galvanometer reversed': ({ galvanometer, ...rest }) => ({
    ...rest,
    galvanometer: { ...galvanometer, perDivision: -galvanometer.perDivision },
  }),
  'cell branch open': ({ cell, ...rest }) => ({ ...rest, cell: { ...cell, internal: Infinity } }),
  'galvanometer branch open': ({ galvanometer, ...rest }) => ({ ...rest, galvanometer: { ...galvanometer, coil: Infinity } }),
} satisfies Record<string, Fault>;

/** What can be wrong with the connections. A known resistance that does not suit is no fault of the bridge: see nullPlace. */
export type FaultName = keyof typeof faults;
export const faultNames = Object.keys(faults) as FaultName[];

/** The same bridge with a fault put in; a loose joint takes its resistance from the bench. */
export function withFault(bridge: Bridge, fault: FaultName, bench: Bench, random: Random): Bridge {
  return faults[fault](bridge, bench, random);
}
