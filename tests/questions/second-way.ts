import { solveNumerically } from './newton.ts';
import type { Choice } from '../../generators/questions/family.ts';
import { type Gap, type Resistor, offNull, parallel, potentials, series } from './network.ts';

type Values = Record<string, number>;
/** Whole columns of a table. */
type Columns = Record<string, readonly number[]>;

/** The gaps in their places on the bridge: what the choice speaks of, and the other. */
const placed = ({ gap }: Choice, own: Gap, other: Gap): [Gap, Gap] => (gap === 'right' ? [other, own] : [own, other]);

/** Off the null at l for a bare wire. */
const off = ([left, right]: [Gap, Gap], l: number, W: number) => offNull(left, right, l, W - l);

/** Each family's circuits, from Kirchhoff's law: all are zero where the quantities fit. */
export const secondWay: Record<string, (v: Values, choice: Choice, direction: string, columns: Columns) => number[]> = {
  balance: ({ P, Q, l, W }) => [off([P!, Q!], l!, W!)],
  interchange: ({ P, Q, T, l1, l2, s, W }) => [
    off([P!, Q!], l1!, W!),
    off([Q!, P!], l2!, W!),
    // Whatever they are, the resistors are as the parts of the wire before.
    off([W! - l1!, l1!], l2!, W!),
    (l2! - l1! - s!) / W!,
    (W! - 2 * l1! - s!) / W!,
    (P! + Q!) / T! - 1,
  ],
  shunt: changedGap(parallel, 1),
  series: changedGap(series, -1),
  removed: ({ X, Y, S, C, l1, l2, s, W }, choice) => [
    off(placed(choice, series(C!, S!), Y!), l1!, W!),
    off(placed(choice, X!, Y!), l1!, W!),
    off(placed(choice, C!, Y!), l2!, W!),
    Number.isNaN(C) ? off(placed(choice, X! - S!, Y!), l2!, W!) : offNull(series(C!, S!), X!, 1, 1),
    (towardsGap(choice, l1!, l2!) - s!) / W!,
  ],
  scaling: ({ k, l1, l2, s, W }, choice, direction) => {
    // Whatever is in the gaps, one ohm in the other.
    const ratio = choice['gap'] === 'right' ? (W! - l1!) / l1! : l1! / (W! - l1!);
    return [off(placed(choice, ratio * k!, 1), l2!, W!), (l2! - l1! - s!) / W!, direction === 'null from equal gaps' ? off([1, 1], l1!, W!) : NaN];
  },
  'both-gaps': ({ P, Q, p, q, l1, l2, W }) => [off([P!, Q!], l1!, W!), off([series(P!, p!), series(Q!, q!)], l2!, W!)],
  combination: ({ A, B, Q1, Q2, l1, l2, T, C, Z, D, W }) => [
    off([T!, Q1!], l1!, W!),
    off([C!, Q2!], l2!, W!),
    off([series(A!, B!), Q1!], l1!, W!),
    off([parallel(A!, B!), Q2!], l2!, W!),
    Z! / C! / T! - 1,
    (A! - B! - D!) / T!,
    A! / T! + B! / T! - 1,
  ],
  ring: ({ r, theta, Y, C, l, W }, choice) => [
    off(placed(choice, parallel((r! * theta!) / 360, (r! * (360 - theta!)) / 360), Y!), l!, W!),
    off(placed(choice, C!, Y!), l!, W!),
  ],
  'end-corrections': ({ P, Q, l, alpha, beta, W }) => [withEnds(P!, Q!, l!, alpha!, beta!, W!)],
  'end-corrections-found': ({ P, Q, l1, l2, alpha, beta, W }) => [withEnds(P!, Q!, l1!, alpha!, beta!, W!), withEnds(Q!, P!, l2!, alpha!, beta!, W!)],
  'wire-length': ({ P, Q, l, W }) => [off([P!, Q!], l!, W!)],
  'non-uniform': ({ P, Q, l, sigma1, sigma2, A, B, W }, { varies }) => {
    const parts = summed((x) => (varies === 'linear' ? x : varies === 'growing' ? sigma1! + ((sigma2! - sigma1!) * x) / W! : 1 / Math.sqrt(x)), l!, W!);
    return [offNull(P!, Q!, ...parts), A! / parts[0] - 1, B! / parts[1] - 1];
  },
  tapered: ({ P, Q, a, b, l, W }) => [offNull(P!, Q!, ...summed((x) => 1 / (a! + ((b! - a!) * x) / W!) ** 2, l!, W!))],
  'two-part-wire': ({ P, Q, l, c, sigma1, sigma2, A, B, W }, { piece }) => {
    const parts: [number, number] = piece === 'left' ? [sigma1! * l!, sigma1! * (c! - l!) + sigma2! * (W! - c!)] : [sigma1! * c! + sigma2! * (l! - c!), sigma2! * (W! - l!)];
    return [offNull(P!, Q!, ...parts), A! / parts[0] - 1, B! / parts[1] - 1];
  },
  'bridge-wire': ({ l1, l2, k, V, W }) => [offNull(l1!, W! - l1!, k! * l2!, k! * (W! - l2!)), offNull(l1!, W! - l1!, l2!, V! - l2!)],
  reshaped: ({ n, k, l1, l2, W }, { gap, how }) => {
    const ratio = gap === 'right' ? (W! - l1!) / l1! : l1! / (W! - l1!);
    // The wire as n small pieces of length and area; both as parts of what they were.
    const [long, wide] = how === 'stretched' ? [n!, 1 / n!] : how === 'cut' ? [1 / n!, 1] : how === 'folded' ? [1 / n!, n!] : how === 'thinned' ? [n! * n!, 1 / (n! * n!)] : [1, n! * n!];
    const now = (ratio * long) / wide;
    return [off(placed({ gap: gap! }, now, 1), l2!, W!), off(placed({ gap: gap! }, ratio * k!, 1), l2!, W!)];
  },
  materials: ({ rho1, L1, d1, A1, rho2, L2, d2, A2, k, l, W }, { section }) => {
    const wires: [number, number] = section === 'area' ? [(rho1! * L1!) / A1!, (rho2! * L2!) / A2!] : [ohmsOf(rho1!, L1!, d1!), ohmsOf(rho2!, L2!, d2!)];
    return [off(wires, l!, W!), off([k!, 1], l!, W!)];
  },
  temperature: ({ Y, X1, X2, l1, l2, t1, t2, alpha, k, W }, choice) => {
    const ratio = choice['gap'] === 'right' ? (W! - l1!) / l1! : l1! / (W! - l1!);
    const hot = (ratio * (1 + alpha! * t2!)) / (1 + alpha! * t1!);
    return [off(placed(choice, hot, 1), l2!, W!), off(placed(choice, X1!, Y!), l1!, W!), off(placed(choice, X2!, Y!), l2!, W!), off(placed(choice, ratio * k!, 1), l2!, W!), offNull(X2!, X1!, 1 + alpha! * t2!, 1 + alpha! * t1!)];
  },
  temperatures: ({ alpha1, alpha2, t, k, l1, l2, W }) => [
    off([l1! * (1 + alpha1! * t!), (W! - l1!) * (1 + alpha2! * t!)], l2!, W!),
    off([l1! * k!, W! - l1!], l2!, W!),
  ],
  currents: ({ P, Q, l, sigma, E, r, N, I, I1, I2, W }, { cell }) => {
    const bridge: Resistor[] = [['A', 'B', P!], ['B', 'C', Q!], ['A', 'C', sigma! * W!]];
    const at = cell === 'real' ? potentials([['S', 'A', r!], ...bridge], ['S', 'C'], E!) : potentials(bridge, ['A', 'C'], E!);
    const [gaps, wire] = [at['B']! / Q!, at['A']! / sigma! / W!];
    return [off([P!, Q!], l!, W!), (gaps + wire) / I! - 1, gaps / I1! - 1, wire / I2! - 1, at['A']! / (gaps + wire) / N! - 1];
  },
  gradient: ({ E, R, w, I, k, l, V, W }) => {
    const at = potentials([['S', 'a', R!], ['a', 'b', (w! * (W! - 1)) / W!], ['b', 'C', w! / W!]], ['S', 'C'], E!);
    return [at['b']! / k! - 1, (E! - at['a']!) / R! / I! - 1, V! / (at['b']! * l!) - 1];
  },
  'off-balance': ({ P, Q, l, sigma, G, E, a, b, V, N, I, W }) => {
    const arms: [number, number] = [sigma! * l!, sigma! * (W! - l!)];
    const at = potentials([['A', 'B', P!], ['B', 'C', Q!], ['A', 'J', arms[0]], ['J', 'C', arms[1]], ['B', 'J', G!]], ['A', 'C'], E!);
    const ohms = potentials([['B', 'A', P!], ['B', 'A', Q!], ['A', 'J', arms[0]], ['A', 'J', arms[1]], ['X', 'B', 1]], ['X', 'J']);
    return [a! / arms[0] - 1, b! / arms[1] - 1, offNull(P!, Q!, ...arms) * E! - V!, ohms['B']! / (1 - ohms['B']!) / N! - 1, (1000 * (at['B']! - at['J']!)) / G! - I!];
  },
  'open-bridge': ({ P, Q, l, E, B, J, V, W }) => {
    const at = potentials([['A', 'B', P!], ['B', 'C', Q!], ['A', 'J', l!], ['J', 'C', W! - l!]], ['A', 'C'], E!);
    return [at['B']! / B! - 1, at['J']! / J! - 1, at['B']! - at['J']! - V!];
  },
  exchange: ({ P, Q, l1, l2, W }) => {
    const at = potentials([['A', 'B', P!], ['B', 'C', Q!], ['A', 'J', l2!], ['J', 'C', W! - l2!]], ['B', 'J']);
    return [off([P!, Q!], l1!, W!), at['A']! - at['C']!];
  },
  'best-choice': ({ S1, l1, X, S2, l2, W }, choice) => [off(placed(choice, X!, S1!), l1!, W!), off(placed(choice, X!, S2!), l2!, W!)],
  'error-of-x': ({ R, dR, l, dl, X, p, dX, W }, { gap }) => {
    const at = (known: number, place: number) => (gap === 'right' ? (known * (W! - place)) / place : (known * place) / (W! - place));
    // The worst of all corners, from differences far smaller than the errors.
    const tiny = 1e-4;
    const spread = [-1, 1].flatMap((i) => [-1, 1].map((j) => (at(R! + i * tiny * (Number.isNaN(dR) ? 0 : dR!), l! + j * tiny * dl!) - X!) / tiny));
    const worst = (Math.max(...spread) - Math.min(...spread)) / 2;
    return [off(gap === 'right' ? [R!, X!] : [X!, R!], l!, W!), worst / dX! - 1, worst / X! / (p! / 100) - 1];
  },
  'error-of-resistivity': (v, { by }) => {
    const tiny = 1e-4;
    const pairs = by === 'meters' ? (['V', 'I', 'd', 'L'] as const) : (['X', 'd', 'L'] as const);
    const rho = (q: Values) => ((by === 'meters' ? q['V']! / q['I']! : q['X']!) * q['d']! * q['d']!) / q['L']!;
    const values = Object.fromEntries(pairs.map((id) => [id, v[id]!]));
    const spread = pairs.reduce((sum, id) => {
      const [up, down] = [1, -1].map((sign) => rho({ ...values, [id]: v[id]! + sign * tiny * v[`d${id}`]! }));
      return sum + Math.abs(up! - down!) / 2 / tiny;
    }, 0);
    return [spread / rho(values) / (v['p']! / 100) - 1];
  },
  'equal-shunts': ({ R, n, m, l, S, W }) => [off([R!, S!], l!, W!), offNull(R!, parallel(...Array.from({ length: n! }, () => S!)), m! * l!, W! - m! * l!)],
  'length-per-ohm': ({ Q, a, b, L, X, y }) => [offNull(X!, Q!, a!, b!), (X! / L!) * y! - 1],
  // The screw as a counter of hundredths: whole turns and divisions from closed jaws to the wire.
  'screw-gauge': ({ p, N, c, m, n, z, e, D, d }, { zero }) => {
    const division = zero === 'known' ? c! : p! / N!;
    const closed = zero === 'known' ? e! / division : zero === 'negative' ? z! - N! : z!;
    const onWire = m! / division + n!;
    return [c! / division - 1, e! / division - closed, D! / division - onWire, (d! / division - (onWire - closed)) / 10];
  },
  // A wire of another section as a bundle of round ones, each a hundredth of a millimetre thick.
  resistivity: ({ X, L, d, A, rho }, { section }) => [section === 'area' ? ohmsOf(rho!, L!, 0.01) / (A! / (Math.PI * 0.005 ** 2)) / X! - 1 : ohmsOf(rho!, L!, d!) / X! - 1],
  'resistivity-bridge': ({ R, l, X, L, d, rho, W }, choice) => [off(placed(choice, X!, R!), l!, W!), ohmsOf(rho!, L! / 100, d!) / X! - 1],
  gauge: ({ rho, X, L, d }) => [ohmsOf(rho!, L!, d!) / X! - 1],
  'carey-foster': ({ X, Y, sigma, l1, l2, W }) => [careyFoster(X!, Y!, sigma!, l1!, l2!, W!)],
  'carey-foster-wire': ({ X, sigma, l1, l2, T, W }) => [careyFoster(X!, 0, sigma!, l1!, l2!, W!), T! / (W! * sigma!) - 1],
  kelvin: ({ G, R, l, W }, choice) => [off(placed(choice, G!, R!), l!, W!)],
  wheatstone: ({ P, Q, R, S, C, T, E, N, I }, { arm }) => {
    if (arm !== 'plain') return [offNull(P!, Q!, R!, C!), armWith(arm!, P!, Q!, R!, S!, T!)];
    const at = potentials([['A', 'B', P!], ['B', 'C', Q!], ['A', 'D', R!], ['D', 'C', S!]], ['A', 'C'], E!);
    const fed = at['B']! / Q! + at['D']! / S!;
    return [offNull(P!, Q!, R!, S!), fed / I! - 1, E! / fed / N! - 1];
  },
  'arms-swapped': ({ R1, R2, X, k }) => {
    // Ratio arms k and 1: k beside the adjustable arm before, 1 beside it after; without k, that of the first balance.
    const ratio = Number.isNaN(k) ? R1! / X! : k!;
    const unknown = Number.isNaN(X) ? R1! / ratio : X!;
    return [offNull(ratio, 1, R1!, unknown), offNull(1, ratio, R2!, unknown)];
  },
  'diameter-report': ({ mean, msd, s }, { sd }, _direction, { d }) => {
    const n = d!.length;
    const sum = d!.reduce((a, b) => a + b, 0);
    const squares = d!.reduce((a, b) => a + b * b, 0);
    // Mean of the squares less the square of the mean.
    const spread = squares / n - (sum / n) ** 2;
    return [mean! / (sum / n) - 1, msd! / spread - 1, (s! * s!) / (sd === 'sample' ? (spread * n) / (n - 1) : spread) - 1];
  },
};

/** The fourth arm as two resistors of a network. */
function armWith(arm: string, P: number, Q: number, R: number, S: number, T: number): number {
  const fourth: Resistor[] = arm === 'shunted' ? [['D', 'C', S], ['D', 'C', T]] : [['D', 'x', S], ['x', 'C', T]];
  const at = potentials([['A', 'B', P], ['B', 'C', Q], ['A', 'D', R], ...fourth], ['A', 'C']);
  return at['B']! - at['D']!;
}

/** The outer gaps in series with the ends of the wire; the inner ones are what the first balance makes them. */
function careyFoster(X: number, Y: number, sigma: number, l1: number, l2: number, W: number): number {
  const inner: [number, number] = [X + sigma * l1, Y + sigma * (W - l1)];
  return offNull(...inner, Y + sigma * l2, X + sigma * (W - l2));
}

/** Answers in words, from the deflection at the two ends of the wire with the circuit as it stands. */
export const secondVerdict: Record<string, (v: Values, choice: Choice, columns: Columns) => Record<string, string>> = {
  gauge: ({ rho, X, L }) => {
    // The gauge whose wire comes nearest to the diameter, tried one after the other.
    const gauges = { '20': 0.914, '22': 0.711, '24': 0.559, '26': 0.457, '28': 0.376, '30': 0.315, '32': 0.274, '34': 0.234, '36': 0.193 };
    const wanted = Math.sqrt(ohmsOf(rho!, L!, 1) / X!);
    let best = '20';
    for (const [name, mm] of Object.entries(gauges)) if (Math.abs(mm - wanted) < Math.abs(gauges[best as '20'] - wanted)) best = name;
    return { gauge: best };
  },
  // The row without which the others agree best.
  'inconsistent-row': (_, { gap }, { R, l }) => {
    const X = R!.map((ohms, i) => solveNumerically(({ x }) => [gap === 'right' ? offNull(ohms, x!, l![i]!, 100 - l![i]!) : offNull(x!, ohms, l![i]!, 100 - l![i]!)], { x: ohms }, ['x'])['x']!);
    const spreads = X.map((_, left) => {
      const rest = X.filter((_, i) => i !== left);
      return Math.max(...rest) / Math.min(...rest);
    });
    return { row: String(spreads.indexOf(Math.min(...spreads)) + 1) };
  },
  'faulty-gap': ({ R }, { gap, fault }) => {
    const bad = fault === 'open' ? 1e12 : 1e-12;
    const at = (l: number) => Math.abs(gap === 'right' ? offNull(R!, bad, l, 100 - l) : offNull(bad, R!, l, 100 - l));
    return { end: at(0.001) < at(99.999) ? 'left end' : 'right end' };
  },
};

/** Resistance of a round wire of ρ in Ω m, length in m and diameter in mm. */
const ohmsOf = (rho: number, metres: number, mm: number) => (rho * metres) / (Math.PI * (mm / 2000) ** 2);

/** The wire cut into slices, their resistances added up on both sides of l (Gauss's rule of two points in each slice, on √x to be fine at the left end). */
function summed(perLength: (x: number) => number, l: number, W: number): [number, number] {
  const between = (from: number, to: number) => {
    const [u, v] = [Math.sqrt(from), Math.sqrt(to)];
    const slices = 300;
    const h = (v - u) / slices;
    let sum = 0;
    for (let i = 0; i < slices; i++) {
      for (const at of [-0.5 / Math.sqrt(3), 0.5 / Math.sqrt(3)]) {
        const root = u + h * (i + 0.5 + at);
        sum += perLength(root * root) * 2 * root * (h / 2);
      }
    }
    return sum;
  };
  return [between(0, l), between(l, W)];
}

/** How far the null point comes nearer to the end beside the gap of a choice. */
const towardsGap = ({ gap }: Choice, from: number, to: number) => (gap === 'right' ? to - from : from - to);

function changedGap(together: (a: number, b: number) => Gap, sense: 1 | -1) {
  return ({ X, Y, S, C, l1, l2, s, W }: Values, choice: Choice) => [
    off(placed(choice, X!, Y!), l1!, W!),
    off(placed(choice, together(X!, S!), Y!), l2!, W!),
    off(placed(choice, C!, Y!), l2!, W!),
    (sense * towardsGap(choice, l1!, l2!) - s!) / W!,
  ];
}

/** The ends of the wire as resistances in series with it. */
function withEnds(left: number, right: number, l: number, alpha: number, beta: number, W: number): number {
  const at = potentials([['A', 'B', left], ['B', 'C', right], ['A', 'w', alpha], ['w', 'J', l], ['J', 'v', W - l], ['v', 'C', beta]], ['A', 'C']);
  return at['B']! - at['J']!;
}
