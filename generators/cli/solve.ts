import { UserMistake } from '../mistake.ts';
import { didYouMean } from '../near-miss.ts';
import { familyNamed } from '../questions/index.ts';
import { type Assignment, solve as solveQuestion } from '../questions/solve.ts';
import { solutionText } from '../questions/text.ts';
import { type QuestionView, questionView } from '../questions/view.ts';
import type { QuestionWords } from '../questions/words.ts';
import { readCommandLine } from './command-line.ts';
import type { Command } from './command.ts';
import { loadFamilyWords, loadQuestionWords } from './question-words.ts';

const AS = { name: 'as', many: false, takes: 'text, html or json', meaning: 'how the working is written' };
const FORMS = ['text', 'html', 'json'];
const LANGUAGE = 'en';

export const solve: Command = {
  usage: 'solve FAMILY name=value …',
  about: 'a question on your own numbers with its full working; what you leave out is asked, and name=? asks for it by name',
  help: () => `slidewire ${solve.usage}\n    ${solve.about}\n\n  --${AS.name}  ${AS.meaning}\n        takes ${AS.takes} (default: text)\n\nA value may have its unit behind it, of another size too: Q=2.4kohm l=37.5cm. Rows stand with commas between: d=0.41,0.42.\nslidewire families lists the families with their quantities.`,
  async run(args) {
    const { flags, positionals } = readCommandLine(args, [AS]);
    const [id, ...rest] = positionals;
    if (id === undefined) throw new UserMistake('say which family: slidewire solve balance P=10 l=40; slidewire families lists them');
    const form = String(flags['as'] ?? 'text');
    if (!FORMS.includes(form)) throw new UserMistake([{ field: '--as', what: `"${form}" is none of ${FORMS.join(', ')}${didYouMean(form, FORMS)}` }]);
    const family = familyNamed(id);
    const words = loadFamilyWords(LANGUAGE, family.id);
    const shared = loadQuestionWords(LANGUAGE);
    const view = questionView(solveQuestion(family, rest.map(assignment), words.reasons), words, shared);
    process.stdout.write(`${(await written(view, shared, form)).trim()}\n`);
  },
};

async function written(view: QuestionView, shared: QuestionWords, form: string): Promise<string> {
  if (form === 'json') return JSON.stringify(view, null, 1);
  if (form === 'text') return solutionText(view, shared);
  // The templates are loaded where they are wanted alone.
  const { solvedHtml } = await import('../press/question-document.ts');
  return solvedHtml(view, shared, LANGUAGE);
}

function assignment(text: string): Assignment {
  const [, name, value] = /^\s*([A-Za-z]\w*)\s*=\s*(.+)$/.exec(text) ?? [];
  if (name === undefined || value === undefined) throw new UserMistake(`"${text}" gives no quantity; write name=value, such as P=12.5, or name=? for what is asked`);
  return { name, value: value.trim() };
}
