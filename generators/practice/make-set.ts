import type { Ask } from '../experiments/ask.ts';
import type { Experiment } from '../experiments/experiment.ts';
import { type Random, type Streams, streams } from '../random.ts';
import type { Sheet } from '../sheets/sheet.ts';
import type { Kit } from './kit.ts';
import type { SetCode } from './set-code.ts';

/** A set of readings to practise on. */
export interface PracticeSet {
  code: SetCode;
  sheet: Sheet;
  ask: Ask;
  /** Places of its wires in the kit's list. */
  wires: number[];
  /** What lay behind the readings: the bench is set up again from it. */
  truth: Record<string, number>;
  /** The streams that it was drawn from: the same names give the same apparatus again. */
  streams: Streams;
}

/** Benches that gave no usable set; a plan that passed makes more than a few of these unbelievable. */
const MOST_FAILURES = 200;

/**
 * The set of a code, the same everywhere. The streams are named 'set', and a sheet's 'sheet', so that whatever the
 * secret of a pack is, no practice set has the numbers of a sheet.
 */
export function makeSet(experiment: Experiment, kit: Kit, code: SetCode): PracticeSet {
  for (let attempt = 0; attempt < MOST_FAILURES; attempt++) {
    const own = streams(`practice ${code}`).within('set', experiment.id, attempt);
    const wires = deal(kit.wires.length, experiment.wires, own.of('wires'));
    const [wire, ...others] = wires.map((place) => kit.wires[place]!);
    const ask: Ask = { ...kit.ask, wire: wire!, others };
    const observed = experiment.observe(ask, own);
    if (!observed) continue;
    const { form, readings, truth, finished } = observed;
    const sheet: Sheet = { format: 1, edition: experiment.edition, experiment: experiment.id, origin: 'generated', form, readings, conventions: kit.conventions, ...(finished && { finished }) };
    return { code, sheet, ask, wires, truth, streams: own };
  }
  throw new Error(`no usable set of readings for ${code} in ${MOST_FAILURES} draws`);
}

const deal = (from: number, count: number, random: Random) => random.shuffle(Array.from({ length: from }, (_, i) => i)).slice(0, count);
