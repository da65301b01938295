import { expect, test } from 'vitest';
import type { Choice } from '../../generators/questions/family.ts';
import { arrangements, directions } from '../../generators/questions/direction.ts';
import { drawGivens } from '../../generators/questions/draw.ts';
import { exactly } from '../../generators/questions/exact.ts';
import { familyNamed } from '../../generators/questions/index.ts';
import { streams } from '../../generators/random.ts';
import { resistor, simulatedCurrents } from '../apparatus/netlist.ts';
import { describeWith } from '../outside.ts';

type Values = Readonly<Record<string, number>>;
/** A part of a SPICE deck, its names ending in a tag, in which letters large and small are the same; V_g carries the current that is meant. */
type Part = (tag: string) => string[];
/** A current that a family works out, in A, and the circuit that it flows in. */
interface Claim {
  amperes: number;
  part: Part;
}

/** Random questions of a family, over all its arrangements and directions. */
const SETS = 60;

/** All quantities of random questions of a family. */
function instances(id: string): { values: Values; choice: Choice }[] {
  const all = arrangements(familyNamed(id)).flatMap((choice) => directions(familyNamed(id), choice));
  return Array.from({ length: SETS }, (_, i) => {
    const direction = all[i % all.length]!;
    const exact = exactly(direction.program, drawGivens(direction, streams('questions against ngspice').of(id, i)));
    return { choice: direction.choice, values: Object.fromEntries([...exact].map(([name, [first]]) => [name, first!])) };
  });
}

/** A branch through an ammeter. */
const metered = (from: string, to: string, ohms: number): Part => (tag) => [...resistor(`m${tag}`, `${from}${tag}`, `meter${tag}`, ohms), `V_g${tag} meter${tag} ${to}${tag} DC 0`];

/** A voltmeter that takes no current: as many amperes through V_g as volts between the points. */
const volts = (plus: string, minus: string): Part => (tag) => [`Emeter${tag} v${tag} 0 ${plus}${tag} ${minus}${tag} 1`, `V_g${tag} v${tag} w${tag} DC 0`, ...resistor(`one${tag}`, `w${tag}`, '0', 1)];

/** Resistors between named points, and a cell whose negative pole is at C, which is earthed. */
function circuit(emf: number, resistors: readonly (readonly [from: string, to: string, ohms: number])[], ...others: Part[]): Part {
  return (tag) => [
    `Vcell${tag} S${tag} C${tag} DC ${emf}`,
    `Vearth${tag} C${tag} 0 DC 0`,
    ...resistors.flatMap(([from, to, ohms], i) => resistor(`${i}x${tag}`, `${from}${tag}`, `${to}${tag}`, ohms)),
    ...others.flatMap((part) => part(tag)),
  ];
}

/** Every current that a set of quantities claims, by family; quantities that a direction has not are left out. */
const CLAIMS: Readonly<Record<string, (values: Values) => Claim[]>> = {
  currents: ({ P, Q, sigma, E, r = 0, W, I, I1, I2 }) => {
    const wire = sigma! * W!;
    const claim = (amperes: number | undefined, part: Part): Claim[] => (amperes === undefined ? [] : [{ amperes, part }]);
    return [
      ...claim(I, circuit(E!, [['A', 'B', P!], ['B', 'C', Q!], ['A', 'C', wire]], metered('S', 'A', r))),
      ...claim(I1, circuit(E!, [['S', 'A', r], ['A', 'B', P!], ['A', 'C', wire]], metered('B', 'C', Q!))),
      ...claim(I2, circuit(E!, [['S', 'A', r], ['A', 'B', P!], ['B', 'C', Q!]], metered('A', 'C', wire))),
    ];
  },
  gradient: ({ E, R, w, I, k, l, V, W }) => {
    const away = l ?? 1;
    const wire = [['S', 'A', R!], ['A', 'J', w! * (1 - away / W!)], ['J', 'C', (w! * away) / W!]] as const;
    return [
      { amperes: I!, part: circuit(E!, wire.slice(1), metered('S', 'A', R!)) },
      { amperes: V ?? k! * away, part: circuit(E!, wire, volts('J', 'C')) },
    ];
  },
  'off-balance': ({ P, Q, l, sigma, G, E, W, I }) => [
    { amperes: I! / 1000, part: circuit(E!, [['S', 'A', 0], ['A', 'B', P!], ['B', 'C', Q!], ['A', 'J', sigma! * l!], ['J', 'C', sigma! * (W! - l!)]], metered('B', 'J', G!)) },
  ],
  'open-bridge': ({ P, Q, l, E, V, W }) => [
    { amperes: V!, part: circuit(E!, [['S', 'A', 0], ['A', 'B', P!], ['B', 'C', Q!], ['A', 'J', l! / 10], ['J', 'C', (W! - l!) / 10]], volts('B', 'J')) },
  ],
};

/** A wire of 2 Ω along 100 cm, a galvanometer of 50 Ω and a cell of 2 V: no null point depends on them. */
const OHMS_PER_CM = 0.02;
const GALVANOMETER = 50;
const CELL = 2;

type Gap = (from: string, to: string) => (readonly [string, string, number])[];
const bare = (ohms: number): Gap => (from, to) => [[from, to, ohms]];
const shunted = (a: number, b: number): Gap => (from, to) => [[from, to, a], [from, to, b]];

/** A bridge with the jockey at l, where the ends of the wire add to it (cm), its gaps from left to right. */
const atJockey = (left: Gap, right: Gap, { alpha = 0, beta = 0, W = 100, perCm = OHMS_PER_CM, cell = CELL }: Partial<Record<'alpha' | 'beta' | 'W' | 'perCm' | 'cell', number>>) => (l: number): Part =>
  circuit(cell, [['S', 'A', 0], ...left('A', 'B'), ...right('B', 'C'), ['A', 'J', perCm * (l + alpha)], ['J', 'C', perCm * (W - l + beta)]], metered('B', 'J', GALVANOMETER));

/** Null points that a set of quantities claims, and the bridge with the jockey anywhere. */
const NULLS: Readonly<Record<string, (values: Values, choice: Choice) => { place: number; at: (l: number) => Part }>> = {
  shunt: ({ X, Y, S, l2, W }, { gap }) => {
    const [changed, other] = [shunted(X!, S!), bare(Y!)];
    return { place: l2!, at: gap === 'right' ? atJockey(other, changed, { W: W! }) : atJockey(changed, other, { W: W! }) };
  },
  'end-corrections': ({ P, Q, l, alpha, beta, W }) => ({ place: l!, at: atJockey(bare(P!), bare(Q!), { alpha: alpha!, beta: beta!, W: W! }) }),
  // Inner gaps that balance at l1, whatever the ends of the wire are; then X and Y change places.
  'carey-foster': ({ X, Y, sigma, l1, l2, W }) => {
    const [e1, e2] = [0.3, 0.1];
    const inner = [bare(X! + e1 + sigma! * l1!), bare(Y! + e2 + sigma! * (W! - l1!))] as const;
    return { place: l2!, at: atJockey(...inner, { alpha: (Y! + e1) / sigma!, beta: (X! + e2) / sigma!, W: W!, perCm: sigma! }) };
  },
};

/** As much of a current as arithmetic may lose. */
const RELATIVE = 1e-9;

describeWith(['ngspice'], 'currents and null points of families against ngspice', () => {
  test.each(Object.keys(CLAIMS))(`the currents of ${SETS} random questions of %s are those of ngspice`, (id) => {
    const claims = instances(id).flatMap(({ values }) => CLAIMS[id]!(values));
    const currents = simulatedCurrents(claims.map(({ part }, i) => part(String(i))));
    expect(currents).toHaveLength(claims.length);
    claims.forEach(({ amperes }, i) => expect(Math.abs(currents[i]! / amperes - 1), `${amperes} A, ngspice ${currents[i]} A`).toBeLessThan(RELATIVE));
  });

  test.each(Object.keys(NULLS))(`at the null points of ${SETS} random questions of %s the galvanometer carries no current, and opposite ones beside them`, (id) => {
    const nulls = instances(id).map(({ values, choice }) => NULLS[id]!(values, choice));
    const currents = simulatedCurrents(nulls.flatMap(({ place, at }) => [at(place - 0.5), at(place), at(place + 0.5)]).map((part, i) => part(String(i))));
    nulls.forEach(({ place }, i) => {
      const [before, on, after] = currents.slice(3 * i, 3 * i + 3) as [number, number, number];
      expect(before * after, `null point at ${place} cm`).toBeLessThan(0);
      expect(Math.abs(on), `null point at ${place} cm`).toBeLessThan(1e-8 * Math.abs(before));
    });
  });

  test(`in ${SETS} random questions on Kelvin's method the galvanometer carries the same current with the jockey on the wire as without it, and another one elsewhere`, () => {
    const sets = instances('kelvin');
    const at = ({ G, R, W }: Values, { gap }: Choice, l: number, joint: number): Part =>
      gap === 'right'
        ? circuit(CELL, [['S', 'A', 0], ['A', 'B', R!], ['A', 'J', OHMS_PER_CM * l], ['J', 'C', OHMS_PER_CM * (W! - l)], ['B', 'J', joint]], metered('B', 'C', G!))
        : circuit(CELL, [['S', 'A', 0], ['B', 'C', R!], ['A', 'J', OHMS_PER_CM * l], ['J', 'C', OHMS_PER_CM * (W! - l)], ['B', 'J', joint]], metered('A', 'B', G!));
    const parts = sets.flatMap(({ values, choice }) => [at(values, choice, values['l']!, Infinity), at(values, choice, values['l']!, 0), at(values, choice, values['l']! + 1, 0)]);
    const currents = simulatedCurrents(parts.map((part, i) => part(String(i))));
    sets.forEach(({ values }, i) => {
      const [lifted, touching, elsewhere] = currents.slice(3 * i, 3 * i + 3) as [number, number, number];
      expect(Math.abs(touching / lifted - 1), `null point at ${values['l']} cm`).toBeLessThan(RELATIVE);
      expect(Math.abs(elsewhere / lifted - 1), `null point at ${values['l']} cm`).toBeGreaterThan(1e-3);
    });
  });
});
