import type { Bench } from '../../apparatus/bench.ts';
import { scaled, written } from '../../apparatus/decimal.ts';
import { fill } from '../../quantities/spoken.ts';
import { celsiusAlone, gaugeAlone, lengthAlone, ohmsToSet, tried } from '../alone.ts';
import { boxReads } from '../bench.ts';
import { readNumber } from '../check.ts';
import { lengthAsShown } from '../rule.ts';
import { isShownOn } from '../screw-gauge.ts';
import { laid } from './bench-beside.ts';
import { thread } from './bench-picture.ts';
import { plugs, showPlugs } from './bench-plugs.ts';
import { atFirst } from './bench-stand.ts';
import type { BenchWords } from './bench-words.ts';
import { bridgeToTry } from './bridge-alone.ts';
import { all } from './elements.ts';
import type { GaugeWords } from './gauge-words.ts';
import { type Trial, trial } from './trial.ts';
import { thimble } from './thimble.ts';

type Judged = Record<'right' | 'wrong', string>;

/** What the build writes into the script of the page of the instruments. */
export interface InstrumentsData {
  sizes: Bench;
  words: { bench: BenchWords; gauge: GaugeWords; rule: { look: string }; instruments: { bridge: Judged; box: Judged & { task: string }; gauge: Pick<Judged, 'right'>; rule: Pick<Judged, 'right'>; thermometer: Judged } };
}

/** Brings the page of the instruments to life: each is worked and read by itself. */
export function startInstruments({ sizes, words }: InstrumentsData): void {
  bridgeToTry(sizes, words.bench, words.instruments.bridge);
  trial('box', (on) => box(on, sizes, words.instruments.box));
  trial('gauge', (on) => gauge(on, sizes, words));
  trial('rule', (on) => rule(on, words));
  trial('thermometer', (on) => thermometer(on, words.instruments.thermometer));
}

function box({ root, say }: Trial, sizes: Bench, words: Judged & { task: string }) {
  const { out } = atFirst();
  const values = sizes.box.plugs;
  let R = '';
  plugs(root, out, () => say(''));
  return {
    put(number: number) {
      R = ohmsToSet(values, tried(number));
      out.box.clear();
      showPlugs(root, out);
      root.querySelector('[data-task]')!.textContent = fill(words.task, { R });
    },
    judge() {
      const sum = boxReads({ plugs: values }, out.box);
      return fill(sum === R ? words.right : words.wrong, { sum });
    },
  };
}

function gauge({ root, say, field }: Trial, sizes: Bench, { gauge: words, instruments }: InstrumentsData['words']) {
  const turned = thimble(root, words, say);
  let one: ReturnType<typeof gaugeAlone>;
  return {
    put(number: number) {
      one = gaugeAlone(sizes, tried(number));
      turned.put(one.gauge, one.touching, WIDE);
    },
    judge() {
      if (turned.count() !== one.touching) return words.notTouching;
      if (!isShownOn(one.gauge, one.touching, field('main'), field('circular'))) return words.look;
      const { whole, decimals } = scaled(one.gauge.leastCount);
      return fill(instruments.gauge.right, { total: written(one.touching * whole, decimals) });
    },
  };
}

/** So far open the jaws stand at first, in divisions. */
const WIDE = 60;

function rule({ root, field }: Trial, { rule: words, instruments }: InstrumentsData['words']) {
  let length = 0;
  return {
    put(number: number) {
      length = lengthAlone(tried(number));
      for (const tape of all('[data-rule-end]', root)) laid(tape, length);
    },
    judge() {
      const L = lengthAsShown(length, field('length'));
      return L === undefined ? words.look : fill(instruments.rule.right, { L });
    },
  };
}

function thermometer({ root, field }: Trial, words: Judged) {
  let celsius = 0;
  return {
    put(number: number) {
      celsius = celsiusAlone(tried(number));
      thread(root.querySelector('[data-bath]')!, celsius);
    },
    judge() {
      const entry = readNumber(field('celsius'));
      const isRight = entry.is === 'number' && Math.abs(Number(entry.written) - celsius) <= 1;
      return fill(isRight ? words.right : words.wrong, { t: Math.round(celsius) });
    },
  };
}
