import { careyFosterCircuit } from '../figures/carey-foster-circuit.ts';
import { type BridgeCircuit, bridgeCircuit } from '../figures/circuit.ts';
import { kelvinCircuit } from '../figures/kelvin-circuit.ts';
import type { FigureWords } from '../figures/words.ts';

/** The circuits of the experiments, by the name that a layout gives. */
export const circuits = {
  bridge: (circuit: BridgeCircuit, words: FigureWords) => bridgeCircuit(circuit, words),
  'carey-foster': (circuit: BridgeCircuit, words: FigureWords) => careyFosterCircuit(circuit, words),
  kelvin: (circuit: BridgeCircuit, words: FigureWords) => kelvinCircuit(circuit, words),
} as const satisfies Record<string, (circuit: BridgeCircuit, words: FigureWords) => string>;
