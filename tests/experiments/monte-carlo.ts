/**
 * The practical once more, from plain formulas and sizes written out here, to predict what the simulated bench must give.
 * It shares no line with the bench. Sizes: from memory, order of size, unless a source stands beside them.
 */

/** s.d. of setting the jockey and of reading its place in cm, of closing the screw gauge in mm, of laying the rule in cm. */
const HANDS = {
  careful: { jockey: 0.05, eye: 0.05, screw: 0.002, rule: 0.03 },
  usual: { jockey: 0.15, eye: 0.1, screw: 0.004, rule: 0.05 },
  hurried: { jockey: 0.3, eye: 0.2, screw: 0.008, rule: 0.1 },
};

/** Ω m (wire makers' tables; nichrome by OpenStax, University Physics), diameters in mm (BS 3737), lengths in cm. */
const WIRES: [rho: number, d: number, L: number][] = [
  [49e-8, 0.376, 60],
  [49e-8, 0.315, 70],
  [49e-8, 0.274, 90],
  [43e-8, 0.376, 90],
  [43e-8, 0.315, 55],
  [43e-8, 0.274, 75],
  [100e-8, 0.457, 45],
  [100e-8, 0.376, 65],
  [100e-8, 0.315, 68],
];

const PLUGS = [20, 10, 5, 2, 2, 1, 0.5, 0.2, 0.2, 0.1];

/** Uniform on [0, 1): the multiplicative generator of Lewis, Goodman and Miller, 16807 modulo 2^31 − 1. */
let state = 20_240_229;
const uniform = () => (state = (16_807 * state) % 2_147_483_647) / 2_147_483_647;
const between = (low: number, high: number) => low + (high - low) * uniform();
/** Box and Muller. */
const normal = () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform());
const roundTo = (value: number, step: number) => Math.round(value / step) * step;

/** One set: X of four rows, and how far mean X and ρ lie from their true values, as fractions. */
export interface Predicted {
  rows: number[];
  X: number;
  rho: number;
}

/** Sets of one kind of hands, the wires in turn; sets without four null points inside the window are left out. */
export function predict(hands: keyof typeof HANDS, count: number): Predicted[] {
  return Array.from({ length: count }, (_, i) => oneSet(HANDS[hands], WIRES[i % WIRES.length]!)).filter((set) => set !== undefined);
}

function oneSet(hand: (typeof HANDS)['usual'], [table, nominal, long]: [number, number, number]): Predicted | undefined {
  const rho = table * (1 + 0.01 * normal());
  const d = nominal * (1 + between(-0.01, 0.01));
  const L = long + 0.3 * normal();
  const ohms = (rho * L) / 100 / ((Math.PI * d * d) / 4e6);
  const planned = (table * long) / 100 / ((Math.PI * nominal * nominal) / 4e6);
  const rows = bridgeRows(hand, ohms, planned);
  if (!rows) return undefined;
  const meanX = rows.reduce((sum, x) => sum + x, 0) / rows.length;
  const seen = diameter(hand, d);
  const length = roundTo(L + hand.rule * normal(), 0.1);
  return { rows, X: meanX / ohms - 1, rho: (Math.PI * seen * seen * meanX * 100) / (4e6 * length) / rho - 1 };
}

/** Settings in tenths of an ohm whose nominal null lies from 40 to 60 cm, cut into four runs, one tried after the other. */
function bridgeRows(hand: (typeof HANDS)['usual'], ohms: number, planned: number): number[] | undefined {
  const settings = Array.from({ length: 410 }, (_, i) => (i + 1) / 10).filter((R) => R / (R + planned) >= 0.4 && R / (R + planned) <= 0.6);
  const nullPoint = bridge(ohms);
  const rows: number[] = [];
  for (let run = 0; run < 4; run++) {
    const tried = settings.slice(Math.floor((run * settings.length) / 4), Math.floor(((run + 1) * settings.length) / 4));
    let found: number | undefined;
    while (found === undefined && tried.length > 0) {
      const [R] = tried.splice(Math.floor(uniform() * tried.length), 1) as [number];
      const l = roundTo(nullPoint(R) + hand.jockey * normal() + hand.eye * normal(), 0.1);
      if (l > 39.95 && l < 60.05) found = (R * (100 - l)) / l;
    }
    if (found === undefined) return undefined;
    rows.push(found);
  }
  return rows;
}

/** One bridge with its box and joints: where the jockey may rest, in cm of the scale, for R in the left gap. */
function bridge(ohms: number): (R: number) => number {
  const [perCm, cell, coil] = [between(0.0123, 0.0441), between(0.3, 1), between(50, 100)];
  const [alpha, beta, zero, bow] = [between(0, 0.5), between(0, 0.5), between(-0.1, 0.1), between(-0.003, 0.003)];
  // A box of class 0.5 %; two joints of 5 to 20 mΩ at either gap.
  const [box, left, right] = [between(-0.005, 0.005), joints(), joints()];
  return (R) => {
    const [P, Q] = [R * (1 + box) + plugs(R) + left, ohms + right];
    const even = (P * (100 + alpha + beta)) / (P + Q) - alpha;
    // The bow adds a·u(1 − u) of the wire to the left of u; it is small, so that u may be taken from the even wire.
    const place = even - (bow * even * (100 - even)) / 100 - zero;
    // A quarter of a division of 15 µA passes for none: Thévenin's resistance and the fall of potential along the wire.
    const wire = 100 * perCm;
    const across = ((P + Q) * wire) / (P + Q + wire);
    const perCentimetre = ((1.5 * across) / (across + cell)) / 100;
    const inner = (P * Q) / (P + Q) + wire * (place / 100) * (1 - place / 100) + coil;
    const unseen = (0.25 * 1.5e-5 * inner) / perCentimetre;
    return place + between(-unseen, unseen);
  };
}

const joints = () => between(0.005, 0.02) + between(0.005, 0.02);

/** Contacts of 1 to 5 mΩ of the plugs that stay in, less the 3 mΩ that the box was trimmed for. */
function plugs(R: number): number {
  let [rest, sum] = [R, 0];
  for (const plug of PLUGS) {
    if (plug <= rest + 1e-9) rest -= plug;
    else sum += between(0.001, 0.005) - 0.003;
  }
  return sum;
}

/** Mean of two readings across each other at four places, least count 0.01 mm, less the zero error as read, in mm. */
function diameter(hand: (typeof HANDS)['usual'], d: number): number {
  const [offset, screw, oval] = [between(-0.005, 0.005), between(-0.004, 0.004), between(0, 0.01)];
  // The zero error as read is a whole number of least counts: it shifts readings and correction alike.
  let sum = 0;
  for (let place = 0; place < 4; place++) {
    const turned = (d * oval * Math.cos(2 * Math.PI * uniform())) / 2;
    for (const across of [d + turned, d - turned]) sum += roundTo(across + offset + screw + hand.screw * normal(), 0.01);
  }
  return sum / 8;
}
