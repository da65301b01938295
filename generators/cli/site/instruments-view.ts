import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import type { Bench } from '../../apparatus/bench.ts';
import { quotient } from '../../apparatus/decimal.ts';
import { screwGauge } from '../../figures/screw-gauge.ts';
import type { FigureWords } from '../../figures/words.ts';
import { benchPlug } from '../../figures/bench/plug.ts';
import { thermometerTape } from '../../figures/bench/tapes.ts';
import { bridgeAlone, lengthAlone, ohmsToSet, tried } from '../../practice/alone.ts';
import type { InstrumentsData } from '../../practice/page/instruments.ts';
import { type BenchView, benchView, ruleView } from './bench-view.ts';
import { instrumentsScript } from './bundle.ts';
import type { SiteWords } from './page-words.ts';

/** The words of the page of the instruments, and of what it shares with the pages of experiments. */
export type InstrumentsWords = Pick<SiteWords, 'bench' | 'gauge'> & Pick<InstrumentsData['words'], 'rule' | 'instruments'>;

/** What the template of the page shows: the instruments as its script finds them, so that they are seen without it too. */
export function instrumentsView(sizes: Bench, site: InstrumentsWords, figures: FigureWords): object {
  const { pitch, divisions } = sizes.screwGauge;
  const boxes: BenchView['boxes'] = [{ name: 'box', plugs: sizes.box.plugs }];
  const length = lengthAlone(tried(1));
  return {
    bridge: benchView(bridgeAlone(sizes, tried(1)), 'bridge', site.bench),
    box: { plug: benchPlug(), box: boxes[0] },
    gauge: screwGauge({ id: 'turned', pitch: Number(pitch), divisions, turns: 1, division: 21 }, figures).svg,
    rule: ruleView(length),
    thermometer: thermometerTape(),
    blanks: { R: ohmsToSet(sizes.box.plugs, tried(1)), pitch, divisions: String(divisions), leastCount: quotient(pitch, divisions)! },
  };
}

export async function writeInstrumentsScript(folder: string, sizes: Bench, site: InstrumentsWords, figures: FigureWords): Promise<void> {
  await mkdir(folder, { recursive: true });
  const { screwGauge: gauge, standing } = figures;
  const words = { bench: site.bench.says, gauge: { ...site.gauge, figures: { screwGauge: gauge, standing } as FigureWords }, rule: site.rule, instruments: site.instruments };
  await writeFile(join(folder, 'instruments.js'), await instrumentsScript({ sizes, words }));
}
