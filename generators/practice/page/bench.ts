import type { FaultName } from '../../apparatus/faults.ts';
import { fill } from '../../quantities/spoken.ts';
import { type BenchReadings, type SetBench, type Setting, benchOf, benchReadings, boxReads, needle, scaleReads } from '../bench.ts';
import { holdToPress, plug, toggled } from './bench-controls.ts';
import { magnifiedScale, needleOn } from './bench-drawings.ts';
import { needleInWords } from './bench-words.ts';
import type { BenchWords } from './data.ts';
import { all, make, onPress } from './elements.ts';
import type { Texts } from './kept.ts';
import type { SetNotebook } from './notebook.ts';

/** A key that is closed for so long is told of, in ms; common practice, no source. */
const WARMS = 20_000;

type Mutable = { -readonly [K in keyof Setting]: Setting[K] } & { out: Set<number> };

/**
 * The bench in the page: the student sets it, and it shows what the simulated one does. `take` gets further readings by
 * place, 'R:0'; none of them brings the printed ones back. Gives what puts another set on the bench.
 */
export function startBench(words: BenchWords, take: (own: Texts) => void): (notebook: SetNotebook) => void {
  const section = document.querySelector<HTMLElement>('[data-bench]');
  if (!section) return () => {};
  const one = <E extends Element = HTMLElement>(selector: string) => section.querySelector<E>(selector)!;
  const said = one('[data-bench-said]');
  const jockey = one<HTMLInputElement>('[data-jockey]');
  const showScale = magnifiedScale(one<SVGSVGElement>('[data-scale]'));
  const setting: Mutable = { out: new Set(), millimetres: 500, isPressed: false, isClosed: false, isProtected: true };
  let bench: SetBench;
  let reads: BenchReadings;
  let turn: (at: number) => void = () => {};
  let warming: ReturnType<typeof setTimeout> | undefined;

  const say = (text: string) => (said.textContent = text);
  const inWords = () => needleInWords(needle(bench, setting), bench.bridge.galvanometer.divisions, setting, words);
  const show = () => {
    showScale(setting.millimetres);
    turn(needle(bench, setting));
    jockey.value = String(setting.millimetres);
    jockey.setAttribute('aria-valuetext', fill(words.at, { cm: scaleReads(setting.millimetres) }));
    one('[data-box-reads]').textContent = fill(words.R, { R: boxReads(bench, setting.out) });
  };
  const move = (to: number) => {
    setting.millimetres = Math.max(0, Math.min(1000, to));
    show();
    if (setting.isPressed) say(`${words.dragging} ${inWords()}`);
  };
  const press = (isPressed: boolean) => {
    setting.isPressed = isPressed;
    show();
    say(isPressed ? `${inWords()}${setting.isClosed ? '' : ` ${words.keyOpen}`}` : words.lifted);
  };

  jockey.addEventListener('input', () => move(Number(jockey.value)));
  for (const button of all('[data-move]', section)) button.addEventListener('click', () => move(setting.millimetres + Number(button.dataset['move'])));
  holdToPress(one('[data-press]'), press);
  for (const button of all('[data-toggle]', section)) {
    button.addEventListener('click', () => {
      const name = button.dataset['toggle'] as 'isClosed' | 'isProtected' | 'isPressed';
      setting[name] = !setting[name];
      button.setAttribute('aria-pressed', String(setting[name]));
      show();
      say(inWords());
      if (name !== 'isClosed') return;
      clearTimeout(warming);
      if (setting.isClosed) warming = setTimeout(() => say(words.warm), WARMS);
    });
  }
  onPress('bench-tell', () =>
    say(
      fill(words.seen, {
        R: boxReads(bench, setting.out),
        cm: scaleReads(setting.millimetres),
        key: words.keys[setting.isClosed ? 'closed' : 'open'],
        protective: words.protectives[setting.isProtected ? 'in' : 'out'],
        needle: inWords(),
      }),
    ),
  );
  onPress('bench-enter', () => {
    const row = Number(one<HTMLSelectElement>('[data-bench-row]').value);
    const values = { R: boxReads(bench, setting.out), l: scaleReads(setting.millimetres) };
    take({ [`${reads.box}:${row}`]: values.R, [`${reads.scale}:${row}`]: values.l });
    const [low, high] = bench.set.ask.window;
    const isOutside = Number(values.l) < low || Number(values.l) > high;
    say(`${fill(isOutside ? words.outside : words.entered, { row: row + 1, ...values, low, high })}${setting.isProtected ? ` ${words.stillIn}` : ''}`);
  });
  onPress('bench-printed', () => {
    take({});
    say('');
  });
  const faulty = one<HTMLInputElement>('[data-faulty]');
  const reveal = one<HTMLButtonElement>('[data-do="bench-reveal"]');
  faulty.addEventListener('change', () => {
    bench = benchOf(bench.set, faulty.checked);
    reveal.hidden = !faulty.checked;
    say('');
    show();
  });
  onPress('bench-reveal', () => say(words.faults[bench.fault as FaultName]));

  return ({ printed, steps }) => {
    const found = benchReadings(steps, printed);
    section.hidden = !found;
    if (!found) return;
    reads = found;
    faulty.checked = false;
    reveal.hidden = true;
    bench = benchOf(printed);
    turn = needleOn(one<SVGSVGElement>('[data-dial]'), bench.bridge.galvanometer.divisions);
    setting.out.clear();
    one('[data-plugs]').replaceChildren(...bench.box.plugs.map((ohms, place) => plug(ohms, () => toggled(setting.out, place), show, words)));
    one('[data-bench-row]').replaceChildren(...Array.from({ length: reads.rows }, (_, row) => make('option', { value: String(row) }, String(row + 1))));
    show();
  };
}
