import type { FigureWords } from '../../figures/words.ts';

/** What the script of a screw gauge says, with the words on its drawing. */
export interface GaugeWords extends Record<'nothing' | 'place' | 'slips' | 'opened' | 'closedReading' | 'notTouching' | 'look' | 'entered', string> {
  figures: FigureWords;
}
