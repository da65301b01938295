import { questionText } from '../questions/text.ts';
import { directions } from '../questions/direction.ts';
import { drawGivens } from '../questions/draw.ts';
import { families as all } from '../questions/index.ts';
import { question } from '../questions/question.ts';
import { questionView } from '../questions/view.ts';
import { streams } from '../random.ts';
import { readCommandLine } from './command-line.ts';
import type { Command } from './command.ts';
import { loadFamilyWords, loadQuestionWords } from './question-words.ts';

export const families: Command = {
  usage: 'families',
  about: 'all families of questions: id, quantities, and a sample of each',
  help: () => `slidewire ${families.usage}\n    ${families.about}`,
  async run(args) {
    readCommandLine(args, []);
    const shared = loadQuestionWords('en');
    for (const family of all) {
      const [first] = directions(family);
      const words = loadFamilyWords('en', family.id);
      const sample = question(first!, drawGivens(first!, streams('sample').of(family.id)));
      const choices = Object.entries(family.choices ?? {}).map(([name, values]) => `${name}=${values.join('|')}`);
      const starts = directions(family).map(({ givens, ask }) => `${givens.join(' ')} → ${ask.finds.join(' ')}`);
      process.stdout.write(`${family.id}  ${words.title}\n    ${[...choices, ...starts].join('; ')}\n    ${questionText(questionView(sample, words, shared))}\n`);
    }
  },
};
