import type { Bench } from '../../apparatus/bench.ts';
import { bridgeAlone, isNull, tried } from '../alone.ts';
import { readNumber } from '../check.ts';
import { showGaps } from './bench-gaps.ts';
import { jockey } from './bench-jockey.ts';
import { picture } from './bench-picture.ts';
import { type Stand, atFirst } from './bench-stand.ts';
import { switches } from './bench-switches.ts';
import { inWords } from './bench-tell.ts';
import type { BenchWords } from './bench-words.ts';
import { onPress } from './elements.ts';
import { trial } from './trial.ts';

/** A bridge with two wires in its gaps, on which the null point is to be found. */
export function bridgeToTry(sizes: Bench, benchWords: BenchWords, words: Record<'right' | 'wrong', string>): void {
  trial('bridge', ({ root, say, field }) => {
    const stand: Stand = { root, words: benchWords, bench: bridgeAlone(sizes, tried(1)), setting: atFirst(), say, show: () => {} };
    const show = picture(stand);
    stand.show = () => show(stand);
    jockey(stand);
    switches(stand);
    onPress('bench-tell', () => say(inWords(stand)));
    return {
      put(number) {
        stand.bench = bridgeAlone(sizes, tried(number));
        Object.assign(stand.setting, atFirst());
        showGaps(stand);
        stand.show();
      },
      judge() {
        const entry = readNumber(field('l'));
        return entry.is === 'number' && isNull(stand.bench, Number(entry.written)) ? words.right : words.wrong;
      },
    };
  });
}
