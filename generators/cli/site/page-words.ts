import { slipsOf } from '../../marking/slipped.ts';
import type { MarkingWords } from '../../marking/words.ts';
import type { BridgeWords } from '../../figures/bench/bridge.ts';
import type { FigureWords } from '../../figures/words.ts';
import { mistakesAt } from '../../practice/finished-record.ts';
import type { BenchWords, FaultsData, FaultsWords, GaugeWords, RuleWords, PageData, PracticeWords } from '../../practice/page/data.ts';
import type { MistakeWords } from '../../practice/record-slots.ts';
import { WRITING } from '../../quantities/finished.ts';
import type { Words } from '../content.ts';
import type { PracticePage } from './practice-page.ts';

/** Words of the site that pages of experiments need. */
export interface SiteWords {
  practice: PracticeWords;
  /** What the template shows, and what the script says. */
  bench: BridgeWords & { says: BenchWords };
  gauge: Omit<GaugeWords, 'figures'>;
  rule: RuleWords;
  faults: FaultsWords & Pick<PracticeWords, 'start' | 'progress' | 'done'> & { says: Partial<PracticeWords['says']> };
}

/** The words that the script of a page needs: those of its own slips, and of figures only where it draws some. */
export function pageWords({ kit, programs, hasBench, hasGauge, hasRule, words: { spoken, figures } }: PracticePage, site: Omit<SiteWords, 'faults'>, { plain, slips }: Pick<MarkingWords, 'plain' | 'slips'>): PageData['words'] {
  const own = new Set(programs.flatMap(({ steps }) => steps.flatMap((step) => slipsOf(step).map(({ id }) => id))));
  const draws = Object.keys(kit.conventions.drawn).length > 0;
  return { practice: site.practice, ...(hasRule && { rule: site.rule }), ...(hasBench && { bench: site.bench.says }), ...(hasGauge && { gauge: { ...site.gauge, figures: { screwGauge: figures.screwGauge, standing: figures.standing } as FigureWords } }), spoken, marking: { plain, slips: Object.fromEntries(Object.entries(slips).filter(([id]) => own.has(id))) }, ...(draws && { figures }) };
}

/** What was done wrong in a record, by the id of the mistake: slips of the catalogue, and what sheets call those of writing and reckoning. */
export function mistakeWords({ slips }: Pick<MarkingWords, 'slips'>, sheet: Words['sheet']): MistakeWords {
  const faults = sheet['faults'] as unknown as Record<string, string>;
  return { ...Object.fromEntries(Object.entries(slips).map(([id, { says }]) => [id, says])), ...Object.fromEntries(WRITING.map((id) => [id, faults[id]!])) };
}

/** The words of a page on which a finished record is judged: its own hints, and the names of the mistakes that its steps can have. */
export function faultsWords(page: PracticePage, site: SiteWords, marking: Pick<MarkingWords, 'plain' | 'slips'>): FaultsData['words'] {
  const { start, progress, done, says, ...faults } = site.faults;
  const can = new Set(page.programs.flatMap((program) => program.steps.flatMap(({ id }) => mistakesAt(program, id))));
  return {
    ...pageWords(page, { ...site, practice: { ...site.practice, start, progress, done, says: { ...site.practice.says, ...says } } }, marking),
    faults,
    mistakes: Object.fromEntries(Object.entries(mistakeWords(marking, page.words.sheet)).filter(([id]) => can.has(id))),
  };
}
