import type { Experiment } from '../../experiments/experiment.ts';
import { benchOf } from '../set-bench.ts';
import { beside } from './bench-beside.ts';
import { connections } from './bench-faults.ts';
import { gaps } from './bench-gaps.ts';
import { jockey } from './bench-jockey.ts';
import { picture } from './bench-picture.ts';
import { plugs, showPlugs } from './bench-plugs.ts';
import { type Stand, atFirst } from './bench-stand.ts';
import { switches } from './bench-switches.ts';
import { inWords } from './bench-tell.ts';
import type { BenchWords } from './bench-words.ts';
import { writing } from './bench-write.ts';
import { onPress } from './elements.ts';
import type { Texts } from './kept.ts';
import type { SetNotebook } from './notebook.ts';

/**
 * The bench in the page: the student sets it, and it shows what the simulated one does. `take` gets further readings by
 * place, 'R:0', and gives the notebook with them; none of them brings the printed ones back. Gives what puts another set on the bench.
 */
export function startBench(words: BenchWords, experiment: Experiment, take: (own: Texts) => SetNotebook): (notebook: SetNotebook) => void {
  const root = document.querySelector<HTMLElement>('[data-bench]');
  if (!root) return () => {};
  let notebook: SetNotebook;
  const stand = aStand(root, words);
  const offerRows = writing(stand, experiment, () => notebook, (own) => (notebook = take(own)));
  const inGaps = gaps(stand, offerRows);
  const more = beside(stand);
  const show = picture(stand);
  stand.show = () => {
    show(stand);
    more.show();
  };
  jockey(stand);
  switches(stand);
  plugs(root, stand.setting.out, () => stand.show());
  const put = (isFaulty: boolean) => {
    stand.bench = benchOf(experiment, notebook.printed, isFaulty)!;
    inGaps.show();
    stand.show();
  };
  const sound = connections(stand, put);
  onPress('bench-tell', () => stand.say(inWords(stand)));
  onPress('bench-printed', () => {
    notebook = take({});
    stand.say('');
  });
  return (opened) => {
    notebook = opened;
    stand.bench = benchOf(experiment, opened.printed)!;
    Object.assign(stand.setting, atFirst(), { out: stand.setting.out, firstIn: opened.printed.ask.known, isProtected: !stand.bench.laid.isInGap });
    for (const places of Object.values(stand.setting.out)) places.clear();
    sound();
    stand.say('');
    showPlugs(root, stand.setting.out);
    inGaps.offer();
    more.offer();
    offerRows();
    put(false);
  };
}

/** A stand without a bench on it yet. */
function aStand(root: HTMLElement, words: BenchWords): Stand {
  const said = root.querySelector('[data-bench-said]')!;
  return { root, words, bench: undefined!, setting: atFirst(), say: (text) => (said.textContent = text), show: () => {} };
}
