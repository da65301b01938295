import { plugsOut } from '../apparatus/box.ts';
import { graph } from '../figures/graph.ts';
import { metreScale } from '../figures/metre-scale.ts';
import { plugBox } from '../figures/plug-box.ts';
import { screwGauge } from '../figures/screw-gauge.ts';
import { thermometer } from '../figures/thermometer.ts';
import { round } from '../quantities/written.ts';
import type { Figure } from './figures.ts';

/** The jockey on its scale; a division of a millimetre either way. */
export const scale: Figure = { latitude: { l: 0.1 }, draw: ({ number }, id, words) => metreScale({ id, pointerCm: number('l') }, words) };

/** Pitch 0.5 mm, 50 divisions: the least count of 0.01 mm that the family is set with. */
const PITCH = 0.5;
const DIVISIONS = 50;

export const gauge: Figure = {
  latitude: { m: 0, n: 1 },
  least: 2,
  // A wire thinner than half a millimetre leaves nothing to be seen on the main scale.
  suits: ({ number }) => number('m') > 0,
  draw: ({ number }, id, words) => screwGauge({ id, pitch: PITCH, divisions: DIVISIONS, turns: Math.round(number('m') / PITCH), division: number('n') }, words),
};

/** The plugs of a box from 1 Ω to 50 Ω; common practice, no source. */
const PLUGS = ['1', '2', '2', '5', '10', '20', '20', '50'] as const;

/** The resistance box with its plugs out: its value is exact. */
export const box = (given: string): Figure => ({
  latitude: { [given]: 0 },
  suits: ({ number }) => Number.isInteger(number(given)) && number(given) <= PLUGS.reduce((sum, plug) => sum + Number(plug), 0),
  draw: ({ number }, id, words) => plugBox({ id, plugs: PLUGS, out: plugsOut(PLUGS, String(number(given))) }, words),
});

/** The warmer of two temperatures on a thermometer; half a division either way. */
export const warmth: Figure = {
  latitude: { t2: 0.5 },
  suits: ({ number }) => number('t2') <= 90,
  draw: ({ number }, id, words) => thermometer({ id, celsius: number('t2') }, words),
};

/** Where on the wire the plotted voltages stand, in cm. */
const PLACES = [10, 30, 50, 70, 90];

/** A slope of so much more or less is a slope read with care off a graph of this size; from memory of marking practice. */
const OF_SLOPE = 0.02;

/** Voltages along the wire against the distance from its end, for their slope in V/cm. */
export const slope: Figure = {
  latitude: {},
  latitudeOf: ({ number }) => ({ k: OF_SLOPE * number('k') }),
  draw({ number }, id, words) {
    const points = PLACES.map((place) => ({ x: String(place), y: round(number('k') * place, { figures: 3 }, 'even') }));
    return graph({ id, x: { quantity: 'l', unit: 'cm', fromZero: true }, y: { quantity: 'V', unit: 'V', fromZero: true }, points, plotted: true, line: { slope: number('k'), intercept: 0 }, squares: [11, 7] }, words);
  },
};
