import { fill } from '../../quantities/spoken.ts';
import { boxReads, boxesIn, shown } from '../bench.ts';
import { type Stand, needleNow } from './bench-stand.ts';

/** Everything that can be seen on the bench, in words: for those who do not see it. */
export function inWords(stand: Stand): string {
  const { bench, setting, words } = stand;
  const { laid } = bench;
  const boxes = boxesIn(bench, setting.pair).map((name) => fill(words.seenBox, { box: words.boxes[name], R: boxReads(laid.boxes[name]![0]!, setting.out[name]) }));
  const beside = [...(laid.clips ? (['rule'] as const) : []), ...(laid.bath ? (['thermometer'] as const) : [])].map((by) => `${words.reads[by]}: ${shown(bench, setting, by)}.`);
  return [
    ...boxes,
    ...beside,
    fill(words.seen, { cm: shown(bench, setting, 'scale') }),
    words.keys[setting.isClosed ? 'closed' : 'open'],
    ...(laid.isInGap ? [] : [words.protectives[setting.isProtected ? 'in' : 'out']]),
    needleNow(stand),
  ].join(' ');
}
