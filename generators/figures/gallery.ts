import { careyFosterCircuit } from './carey-foster-circuit.ts';
import { bridgeCircuit, fourArmCircuit } from './circuit.ts';
import { dial } from './dial.ts';
import { graphPaper } from './graph-paper.ts';
import { graph, type Graph } from './graph.ts';
import { kelvinCircuit } from './kelvin-circuit.ts';
import { labelledBridge, labelledDiamond } from './labelled-circuit.ts';
import { metreScale } from './metre-scale.ts';
import { plugBox } from './plug-box.ts';
import { rule } from './rule.ts';
import { screwGauge } from './screw-gauge.ts';
import type { Drawing } from './svg.ts';
import { thermometer } from './thermometer.ts';
import type { FigureWords } from './words.ts';

export interface Exhibit {
  id: string;
  caption: string;
  svg: string;
}

/** Every figure in its variants; the captions are content, under the same ids. Values are made up for the page. */
export function gallery(words: FigureWords): Exhibit[] {
  return Object.entries(drawings(words)).map(([id, svg]) => {
    const caption = words.gallery[id];
    if (caption === undefined) throw new RangeError(`the figure ${id} has no caption`);
    return { id, caption, svg };
  });
}

function drawings(words: FigureWords): Record<string, string> {
  const drawn = (id: string, make: (frame: { id: string }) => Drawing | string): [string, string] => {
    const made = make({ id });
    return [id, typeof made === 'string' ? made : made.svg];
  };
  return Object.fromEntries([
    drawn('circuit-rectangle', (f) => bridgeCircuit({ ...f, known: 'left', symbol: 'rectangle', named: true }, words)),
    drawn('circuit-zigzag', (f) => bridgeCircuit({ ...f, known: 'right', symbol: 'zigzag', named: false }, words)),
    drawn('four-arms-rectangle', (f) => fourArmCircuit({ ...f, known: 'left', symbol: 'rectangle' }, words)),
    drawn('four-arms-zigzag', (f) => fourArmCircuit({ ...f, known: 'right', symbol: 'zigzag' }, words)),
    drawn('carey-foster-rectangle', (f) => careyFosterCircuit({ ...f, symbol: 'rectangle', named: true }, words)),
    drawn('carey-foster-zigzag', (f) => careyFosterCircuit({ ...f, symbol: 'zigzag', named: false }, words)),
    drawn('kelvin-rectangle', (f) => kelvinCircuit({ ...f, known: 'left', symbol: 'rectangle', named: true }, words)),
    drawn('kelvin-zigzag', (f) => kelvinCircuit({ ...f, known: 'right', symbol: 'zigzag', named: false }, words)),
    drawn('labelled-bridge', (f) => labelledBridge({ ...f, symbol: 'rectangle', gaps: [{ join: 'one', labels: ['R = 6.0 Ω'] }, { join: 'parallel', labels: ['X', 'S = 20 Ω'] }], length: 'l₂ = 44.5 cm', cell: 'E = 2.0 V' }, words)),
    drawn('labelled-series', (f) => labelledBridge({ ...f, symbol: 'zigzag', gaps: [{ join: 'series', labels: ['P', 'p = 10 Ω'] }, { join: 'series', labels: ['Q', 'q = 7.5 Ω'] }], length: 'l₂' }, words)),
    drawn('labelled-four-gaps', (f) => labelledBridge({ ...f, symbol: 'rectangle', gaps: ['X = 2.0 Ω', 'P', 'Q', 'Y'].map((one) => ({ join: 'one', labels: [one] })), length: 'l₁ = 55.0 cm' }, words)),
    drawn('labelled-diamond', (f) => labelledDiamond({ ...f, symbol: 'rectangle', arms: [{ join: 'one', labels: ['P = 10 Ω'] }, { join: 'one', labels: ['Q = 20 Ω'] }, { join: 'one', labels: ['R = 15 Ω'] }, { join: 'parallel', labels: ['S = 45 Ω', 'T'] }] }, words)),
    drawn('scale-on-a-mark', (f) => metreScale({ ...f, pointerCm: 57.4 }, words)),
    drawn('scale-between-marks', (f) => metreScale({ ...f, pointerCm: 38.93 }, words)),
    drawn('gauge-zero-none', (f) => screwGauge({ ...f, pitch: 0.5, divisions: 50, turns: 0, division: 0 }, words)),
    drawn('gauge-zero-positive', (f) => screwGauge({ ...f, pitch: 0.5, divisions: 50, turns: 0, division: 4 }, words)),
    drawn('gauge-zero-negative', (f) => screwGauge({ ...f, pitch: 0.5, divisions: 50, turns: -1, division: 46 }, words)),
    drawn('gauge-wire', (f) => screwGauge({ ...f, pitch: 0.5, divisions: 50, turns: 1, division: 21 }, words)),
    drawn('gauge-rod', (f) => screwGauge({ ...f, pitch: 1, divisions: 100, turns: 6, division: 83 }, words)),
    drawn('plug-box', (f) => plugBox({ ...f, plugs: ['0.1', '0.2', '0.2', '0.5', '1', '2', '2', '5', '10', '20'], out: [3, 4, 6] }, words)),
    drawn('plug-box-all-in', (f) => plugBox({ ...f, plugs: ['1', '2', '2', '5', '10'], out: [] }, words)),
    drawn('dial-zero', (f) => dial({ ...f, deflection: 0 }, words)),
    drawn('dial-left', (f) => dial({ ...f, deflection: -17 }, words)),
    drawn('dial-stop', (f) => dial({ ...f, deflection: 400 }, words)),
    drawn('thermometer', (f) => thermometer({ ...f, celsius: 26.5 }, words)),
    drawn('rule', (f) => rule({ ...f, leftCm: 3, rightCm: 74.6 }, words)),
    drawn('graph-paper', (f) => graphPaper(f, words)),
    drawn('graph-axes', (f) => graph({ ...f, ...lengths, plotted: false }, words)),
    drawn('graph-plotted', (f) => graph({ ...f, ...lengths, plotted: true, line, triangle }, words)),
    drawn('graph-reciprocal', (f) => graph({ ...f, ...reciprocal, plotted: true, line: { slope: 0.0335, intercept: 0.01 } }, words)),
  ]);
}

const lengths = {
  x: { quantity: 'L', unit: 'cm', fromZero: true },
  y: { quantity: 'X', unit: 'Ω', fromZero: true },
  points: [
    { x: '30.0', y: '1.24', uy: 0.06 },
    { x: '50.0', y: '2.03', uy: 0.09 },
    { x: '70.0', y: '2.91', uy: 0.12 },
    { x: '90.0', y: '3.68', uy: 0.15 },
    { x: '110.0', y: '4.55', uy: 0.19 },
  ],
} satisfies Partial<Graph>;
const line = { slope: 0.0414, intercept: -0.016 };
const triangle = { x1: 20, x2: 100, run: 'ΔL = 80.0 cm', rise: 'ΔX = 3.31 Ω' };

const reciprocal = {
  x: { quantity: '1/R', unit: 'Ω⁻¹' },
  y: { quantity: '1/l', unit: 'cm⁻¹' },
  points: [
    { x: '0.250', y: '0.0184' },
    { x: '0.333', y: '0.0211' },
    { x: '0.500', y: '0.0268' },
  ],
} satisfies Partial<Graph>;
