import { slipsOf } from '../../marking/slipped.ts';
import type { MarkingWords } from '../../marking/words.ts';
import type { BridgeWords } from '../../figures/bench/bridge.ts';
import type { FigureWords } from '../../figures/words.ts';
import type { BenchWords, GaugeWords, PageData, PracticeWords } from '../../practice/page/data.ts';
import type { PracticePage } from './practice-page.ts';

/** The words that the script of a page needs: those of its own slips, and of figures only where it draws some. */
export function pageWords({ kit, programs, hasBench, hasGauge, words: { spoken, figures } }: PracticePage, site: { practice: PracticeWords; bench: BridgeWords & { says: BenchWords }; gauge: Omit<GaugeWords, 'figures'> }, { plain, slips }: Pick<MarkingWords, 'plain' | 'slips'>): PageData['words'] {
  const own = new Set(programs.flatMap(({ steps }) => steps.flatMap((step) => slipsOf(step).map(({ id }) => id))));
  const draws = Object.keys(kit.conventions.drawn).length > 0;
  return { practice: site.practice, ...(hasBench && { bench: site.bench.says }), ...(hasGauge && { gauge: { ...site.gauge, figures: { screwGauge: figures.screwGauge, standing: figures.standing } as FigureWords } }), spoken, marking: { plain, slips: Object.fromEntries(Object.entries(slips).filter(([id]) => own.has(id))) }, ...(draws && { figures }) };
}
