import { fill } from '../../quantities/spoken.ts';
import { lengthAsShown, ruleBench } from '../rule.ts';
import { laid } from './bench-beside.ts';
import { oneIn } from './bench-stand.ts';
import { all, onPress } from './elements.ts';
import type { Texts } from './kept.ts';
import type { SetNotebook } from './notebook.ts';

/** What the script of a rule says. */
export type RuleWords = Record<'look' | 'entered', string>;

/** The wire on its rule: the student reads both ends and writes down the length. Gives what lays another set's wire there. */
export function startRule(words: RuleWords, take: (own: Texts) => void): (notebook: SetNotebook) => void {
  const section = document.querySelector<HTMLElement>('[data-rule]');
  if (!section) return () => {};
  const one = oneIn(section);
  const input = one<HTMLInputElement>('[data-rule-length]');
  let bench: ReturnType<typeof ruleBench>;
  onPress('rule-enter', () => {
    const L = lengthAsShown(bench!.length, input.value);
    one('[data-rule-said]').textContent = L === undefined ? words.look : fill(words.entered, { L });
    if (L !== undefined) take({ [`${bench!.id}:0`]: L });
  });
  return ({ steps, printed }) => {
    bench = ruleBench(steps, printed);
    section.hidden = !bench;
    for (const tape of all('[data-rule-end]', section)) laid(tape, bench?.length ?? 0);
  };
}
