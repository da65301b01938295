import type { Put } from '../../experiments/on-bench.ts';
import { fill } from '../../quantities/spoken.ts';
import { boxesIn } from '../bench.ts';
import { type Stand, oneIn } from './bench-stand.ts';
import type { BenchWords } from './bench-words.ts';
import { all, make } from './elements.ts';

/** What is in the gaps, and which of the two is in the left one: two plain choices. */
export function gaps(stand: Stand, changed: () => void): { offer(): void; show(): void } {
  const { root, setting, words } = stand;
  const one = oneIn(root);
  const [pair, side] = [one<HTMLSelectElement>('[data-pair]'), one<HTMLSelectElement>('[data-first-in]')];
  const nameSides = () => {
    const [first] = names(stand);
    side.replaceChildren(...(['left', 'right'] as const).map((each) => make('option', { value: each }, fill(words[each === 'left' ? 'inLeft' : 'inRight'], { first }))));
    side.value = setting.firstIn;
  };
  const connect = () => {
    setting.isPressed = false;
    nameSides();
    showGaps(stand);
    stand.show();
    changed();
  };
  pair.addEventListener('change', () => {
    setting.pair = Number(pair.value);
    connect();
  });
  side.addEventListener('change', () => {
    setting.firstIn = side.value as 'left' | 'right';
    connect();
  });
  return {
    offer() {
      const { pairs } = stand.bench.laid;
      pair.replaceChildren(...pairs.map((each, i) => make('option', { value: String(i) }, fill(words.pair, { first: nameOf(each.first, words), second: nameOf(each.second, words) }))));
      pair.value = String(setting.pair);
      pair.hidden = pairs.length < 2;
      nameSides();
    },
    show: () => showGaps(stand),
  };
}

const nameOf = (put: Put, words: BenchWords) => (typeof put === 'string' ? words.boxes[put] : words.puts[put.name]!);

function names({ bench, setting, words }: Stand): [string, string] {
  const { first, second } = bench.laid.pairs[setting.pair]!;
  return [nameOf(first, words), nameOf(second, words)];
}

/** Things that are drawn otherwise than as a coil of wire. */
const drawnAs = (put: Put) => (typeof put === 'string' ? 'box' : put.name === 'strip' || put.name === 'galvanometer' ? put.name : 'thing');

/** Draws what is in the gaps, and shows the boxes that matter with it. */
export function showGaps({ root, bench, setting, words }: Stand): void {
  const { first, second } = bench.laid.pairs[setting.pair]!;
  const inGap = { left: setting.firstIn === 'left' ? first : second, right: setting.firstIn === 'left' ? second : first };
  for (const [side, put] of Object.entries(inGap)) {
    const gap = root.querySelector(`[data-gap="${side}"]`)!;
    for (const each of all('[data-put]', gap)) each.toggleAttribute('hidden', each.dataset['put'] !== drawnAs(put));
    gap.querySelector('[data-name]')!.textContent = nameOf(put, words);
  }
  for (const box of all('[data-box]', root)) box.hidden = !boxesIn(bench, setting.pair).includes(box.dataset['box'] as never);
}
