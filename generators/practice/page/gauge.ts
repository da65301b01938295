import { screwGauge } from '../../figures/screw-gauge.ts';
import { fill } from '../../quantities/spoken.ts';
import { type GaugeBench, gaugeBench, isAsShown, thimbleAt } from '../screw-gauge.ts';
import type { GaugeWords } from './data.ts';
import { all, make, onPress } from './elements.ts';
import type { Texts } from './kept.ts';
import type { SetNotebook } from './notebook.ts';

/** So far open the jaws stand at first, in divisions: wider than any wire. */
const WIDE = 150;

/** The screw gauge in the page: the student turns it onto the wire, reads it, and writes down what it shows. Gives what puts another set's gauge there. */
export function startGauge(words: GaugeWords, take: (own: Texts) => void): (notebook: SetNotebook) => void {
  const section = document.querySelector<HTMLElement>('[data-gauge]');
  if (!section) return () => {};
  const one = <E extends Element = HTMLElement>(selector: string) => section.querySelector<E>(selector)!;
  const between = one<HTMLSelectElement>('[data-gauge-at]');
  const [main, circular] = [one<HTMLInputElement>('[data-gauge-main]'), one<HTMLInputElement>('[data-gauge-circular]')];
  const said = one('[data-gauge-said]');
  const say = (text: string) => (said.textContent = text);
  let bench: GaugeBench;
  let count = WIDE;

  const touching = () => (between.value === '' ? bench.closed : bench.touching[Number(between.value)]!);
  const show = () => {
    const { pitch, divisions } = bench.gauge;
    const drawn = screwGauge({ id: 'turned', pitch: Number(pitch) === 1 ? 1 : 0.5, divisions, ...thimbleAt(bench.gauge, count) }, words.figures);
    one('[data-gauge-drawn]').innerHTML = drawn.svg;
    return drawn.seen;
  };
  const turnTo = (to: number) => {
    count = Math.max(touching(), to);
    const seen = show();
    say(to < count ? words.slips : seen);
  };

  for (const button of all('[data-turn]', section)) button.addEventListener('click', () => turnTo(count + Number(button.dataset['turn'])));
  onPress('gauge-close', () => turnTo(touching() - 1));
  between.addEventListener('change', () => {
    count = touching() + WIDE;
    show();
    say(words.opened);
  });
  onPress('gauge-enter', () => {
    if (between.value === '') return void say(words.closedReading);
    if (count !== touching()) return void say(words.notTouching);
    if (!isAsShown(bench, count, main.value.trim(), circular.value.trim())) return void say(words.look);
    const row = Number(between.value);
    // A whole half-millimetre is written with its decimal, as the scale gives it.
    const onScale = main.value.trim().includes('.') ? main.value.trim() : `${main.value.trim()}.0`;
    take({ [`${bench.main}:${row}`]: onScale, [`${bench.circular}:${row}`]: String(Number(circular.value)) });
    say(fill(words.entered, { main: onScale, circular: circular.value.trim() }));
    for (const input of [main, circular]) input.value = '';
  });

  return ({ steps, printed }) => {
    const found = gaugeBench(steps, printed);
    section.hidden = !found;
    if (!found) return;
    bench = found;
    const labels = all('table.record tbody tr', document).filter((row) => row.querySelector(`[data-slot="read:${found.main}:${0}"], [data-slot^="read:${found.main}:"]`)).map((row) => row.querySelector('th')!.textContent.trim());
    between.replaceChildren(make('option', { value: '' }, words.nothing), ...found.touching.map((_, row) => make('option', { value: String(row) }, fill(words.place, { place: labels[row] ?? row + 1 }))));
    count = WIDE;
    show();
  };
}
