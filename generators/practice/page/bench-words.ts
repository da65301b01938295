import type { FaultName } from '../../apparatus/faults.ts';
import type { BoxName, Shows } from '../../experiments/on-bench.ts';
import { fill } from '../../quantities/spoken.ts';
import type { Setting, StudentBench } from '../bench.ts';

type Sentences<Name extends string> = Record<Name, string>;

/** What the script of a bench says. */
export interface BenchWords
  extends Sentences<
    | 'pair' | 'inLeft' | 'inRight' | 'at' | 'seen' | 'seenBox' | 'zero' | 'left' | 'right' | 'stopLeft' | 'stopRight' | 'lifted' | 'pressed' | 'dragging' | 'warm' | 'keyOpen' | 'row' | 'misread' | 'entered' | 'outside' | 'stillIn' | 'others'
  > {
  keys: Sentences<'open' | 'closed'>;
  protectives: Sentences<'in' | 'out'>;
  reads: Record<Shows, string>;
  boxes: Record<BoxName, string>;
  puts: Record<string, string>;
  faults: Sentences<FaultName>;
}

/** Smaller deflections in divisions pass for none, as they do to the eye. */
const UNSEEN = 0.25;

/** What the needle shows, in words, to the half division. */
export function needleInWords(at: number, { laid: { bridge } }: StudentBench, { isPressed }: Pick<Setting, 'isPressed'>, words: BenchWords): string {
  const size = Math.max(0.5, Math.round(2 * Math.abs(at)) / 2);
  const stands =
    Math.abs(at) < UNSEEN
      ? words.zero
      : size >= bridge.galvanometer.divisions
        ? words[at < 0 ? 'stopLeft' : 'stopRight']
        : fill(words[at < 0 ? 'left' : 'right'], { divisions: size });
  return isPressed ? stands : `${words.lifted} ${stands}`;
}
