import type { SpokenWords } from '../../quantities/spoken.ts';
import type { MarkingWords } from '../../marking/words.ts';
import type { FigureWords } from '../../figures/words.ts';
import type { Experiment } from '../../experiments/experiment.ts';
import type { drawnSlots } from '../drawn.ts';
import type { startBench } from './bench.ts';
import type { BenchWords } from './bench-words.ts';
import type { startGauge } from './gauge.ts';
import type { GaugeWords } from './gauge-words.ts';
import type { RuleWords, startRule } from './rule.ts';
import type { ReadySentences } from '../fillings.ts';
import type { ReadyFormula } from '../formula.ts';
import type { Kit } from '../kit.ts';
import type { MistakeWords } from '../record-slots.ts';

export type { BenchWords, GaugeWords, RuleWords };

type Sentences<Name extends string> = Record<Name, string>;

/** The words of a practice page, as content/LANGUAGE/site.yaml holds them. */
export interface PracticeWords
  extends Sentences<
    'notACode' | 'aSheetCode' | 'shared' | 'cleared' | 'plain' | 'full' | 'progress' | 'start' | 'done' | 'rowOf' | 'label' | 'minus' | 'tens' | 'right' | 'rightByKey' | 'again' | 'unread' | 'moreWorking' | 'allWorking'
  > {
  says: Sentences<
    | 'right' | 'byTheKey' | 'tooMany' | 'tooFew' | 'decimals' | 'figures' | 'one' | 'either' | 'both' | 'at' | 'unit' | 'unreadable' | 'formula' | 'numbers' | 'look' | 'still'
  >;
}

/** The words of a page for readings that were really taken. */
export type MineWords = Sentences<'fault' | 'unread' | 'window' | 'row' | 'agree' | 'begin' | 'more' | 'next' | 'none'>;

/** The words of a page on which a finished record is judged. */
export type FaultsWords = Sentences<'follows' | 'mistake' | 'what' | 'instead'>;

/** What the build writes into the script of one experiment. */
export interface PageData {
  experiment: Experiment;
  kit: Kit;
  /** Draws the instruments that the student reads off drawings; only where there are some. */
  drawnSlots?: typeof drawnSlots;
  /** The bench; only where the readings of the set can be taken on it. */
  startBench?: typeof startBench;
  /** The screw gauge to be turned; only where the set has one. */
  startGauge?: typeof startGauge;
  /** The wire on a rule; only where the set has one length to be read. */
  startRule?: typeof startRule;
  ready: ReadySentences;
  formulas: Readonly<Record<string, ReadyFormula>>;
  signed: readonly string[];
  scientific: readonly string[];
  words: { practice: PracticeWords; bench?: BenchWords; gauge?: GaugeWords; rule?: RuleWords; spoken: SpokenWords; marking: Pick<MarkingWords, 'plain' | 'slips'>; figures?: FigureWords };
}

/** The same of a page for readings that were really taken. */
export type MineData = Omit<PageData, 'words'> & { words: PageData['words'] & { mine: MineWords } };

/** The same of a page on which a finished record is judged; what was done wrong in a sentence, by the id of the mistake. */
export type FaultsData = Omit<PageData, 'words'> & { words: PageData['words'] & { faults: FaultsWords; mistakes: MistakeWords } };
