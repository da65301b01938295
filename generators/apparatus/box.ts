import { UserMistake } from '../mistake.ts';
import type { Written } from '../quantities/step.ts';
import type { Random } from '../random.ts';
import type { Bench } from './bench.ts';
import { scaled, wholeIn, written } from './decimal.ts';
import { within } from './draw.ts';

/**
 * A plug resistance box: a plug taken out puts its resistance in circuit; a plug left in adds its contact.
 * The maker trims a box at its terminals, where a coil and the contacts of the other plugs cannot be told apart, so that
 * what usual contacts add is inside the values marked. Only how far a contact lies from that is an error.
 */
export interface Box {
  /** Value of each plug in Ω, in the order they stand. */
  plugs: readonly Written[];
  /** Relative error of all coils alike: the box's own, inside its class. */
  error: number;
  /** By how much the contact of each plug, while it is in, exceeds what the box was trimmed for, in Ω. */
  contacts: readonly number[];
}

/** One box of the bench's kind. */
export function makeBox({ box }: Bench, random: Random): Box {
  return { plugs: box.plugs, error: within(box.tolerance, random), contacts: seated(box, random) };
}

/** The same box with its plugs pressed home again: taking one out loosens its neighbours. */
export function reseat(box: Box, bench: Bench, random: Random): Box {
  return { ...box, contacts: seated(bench.box, random) };
}

function seated({ plugs, plugContact: [least, most] }: Bench['box'], random: Random): number[] {
  return plugs.map(() => within((most - least) / 2, random));
}

const valuesKept = new Map<string, readonly Written[]>();

/** Every resistance above zero that the plugs can give, ascending, in Ω with the digits of the finest plug; worked out once for a box. */
export function boxValues(plugs: readonly Written[]): readonly Written[] {
  const key = plugs.join(' ');
  const kept = valuesKept.get(key) ?? allValues(plugs);
  valuesKept.set(key, kept);
  return kept;
}

function allValues(plugs: readonly Written[]): Written[] {
  const decimals = finest(plugs);
  const sums = new Set([0]);
  for (const plug of plugs) for (const sum of [...sums]) sums.add(sum + wholeIn(plug, decimals));
  return [...sums].sort((a, b) => a - b).slice(1).map((sum) => written(sum, decimals));
}

/** Which plugs (places in the list) are out for `ohms`: the largest that fit first. UserMistake where the box cannot give it. */
export function plugsOut(plugs: readonly Written[], ohms: Written): number[] {
  const decimals = finest(plugs);
  const order = plugs.map((plug, place) => ({ place, whole: wholeIn(plug, decimals) })).sort((a, b) => b.whole - a.whole);
  const out = scaled(ohms).decimals > decimals ? undefined : choose(order, wholeIn(ohms, decimals));
  if (!out) throw cannotGive(plugs, ohms);
  return out.sort((a, b) => a - b);
}

/** True resistance in Ω between the box's terminals when `ohms` is set. */
export function boxResistance(box: Box, ohms: Written): number {
  const out = new Set(plugsOut(box.plugs, ohms));
  const coils = Number(ohms) * (1 + box.error);
  return box.contacts.reduce((sum, contact, place) => (out.has(place) ? sum : sum + contact), coils);
}

interface Plug {
  place: number;
  whole: number;
}

function choose(order: readonly Plug[], rest: number): number[] | undefined {
  if (rest === 0) return [];
  if (order.reduce((sum, { whole }) => sum + whole, 0) < rest) return undefined;
  const [first, ...others] = order as [Plug, ...Plug[]];
  const taken = first.whole <= rest ? choose(others, rest - first.whole) : undefined;
  return taken ? [first.place, ...taken] : choose(others, rest);
}

function finest(plugs: readonly Written[]): number {
  return Math.max(...plugs.map((plug) => scaled(plug).decimals));
}

function cannotGive(plugs: readonly Written[], ohms: Written): UserMistake {
  const values = boxValues(plugs);
  const below = values.findLast((value) => Number(value) < Number(ohms));
  const above = values.find((value) => Number(value) > Number(ohms));
  const near = [below, above].filter((value) => value !== undefined).join(' or ');
  return new UserMistake(`the resistance box cannot give ${ohms} Ω; its plugs are ${plugs.join(', ')}: take ${near} Ω`);
}
