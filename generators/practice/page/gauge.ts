import { fill } from '../../quantities/spoken.ts';
import { type GaugeBench, gaugeBench, isShownOn } from '../screw-gauge.ts';
import { oneIn } from './bench-stand.ts';
import { all, make, onPress } from './elements.ts';
import type { GaugeWords } from './gauge-words.ts';
import type { Texts } from './kept.ts';
import type { SetNotebook } from './notebook.ts';
import { thimble } from './thimble.ts';

/** So far open the jaws stand at first, in divisions: wider than any wire. */
const WIDE = 150;

/** The screw gauge in the page: the student turns it onto the wire, reads it, and writes down what it shows. Gives what puts another set's gauge there. */
export function startGauge(words: GaugeWords, take: (own: Texts) => void): (notebook: SetNotebook) => void {
  const section = document.querySelector<HTMLElement>('[data-gauge]');
  if (!section) return () => {};
  const one = oneIn(section);
  const between = one<HTMLSelectElement>('[data-gauge-at]');
  const [main, circular] = [one<HTMLInputElement>('[data-gauge-main]'), one<HTMLInputElement>('[data-gauge-circular]')];
  const say = (text: string) => void (one('[data-gauge-said]').textContent = text);
  const turned = thimble(section, words, say);
  let bench: GaugeBench;
  const touching = () => (between.value === '' ? bench.closed : bench.touching[Number(between.value)]!);

  between.addEventListener('change', () => {
    turned.put(bench.gauge, touching(), WIDE);
    say(words.opened);
  });
  onPress('gauge-enter', () => {
    if (between.value === '') return say(words.closedReading);
    if (turned.count() !== touching()) return say(words.notTouching);
    const [onScale, division] = [main.value.trim(), circular.value.trim()];
    if (!isShownOn(bench.gauge, turned.count(), onScale, division)) return say(words.look);
    const row = Number(between.value);
    // A whole half-millimetre is written with its decimal, as the scale gives it.
    const written = onScale.includes('.') ? onScale : `${onScale}.0`;
    take({ [`${bench.main}:${row}`]: written, [`${bench.circular}:${row}`]: String(Number(division)) });
    say(fill(words.entered, { main: written, circular: division }));
    for (const input of [main, circular]) input.value = '';
  });

  return ({ steps, printed }) => {
    const found = gaugeBench(steps, printed);
    section.hidden = !found;
    if (!found) return;
    bench = found;
    const labels = all('table.record tbody tr').filter((row) => row.querySelector(`[data-slot^="read:${found.main}:"]`)).map((row) => row.querySelector('th')!.textContent.trim());
    between.replaceChildren(make('option', { value: '' }, words.nothing), ...found.touching.map((_, row) => make('option', { value: String(row) }, fill(words.place, { place: labels[row] ?? row + 1 }))));
    turned.put(bench.gauge, touching(), WIDE);
  };
}
