import { loadFigureWords } from '../../generators/cli/content.ts';
import { loadFamilyWords, loadPaperWords, loadQuestionWords } from '../../generators/cli/question-words.ts';
import { markTable } from '../../generators/papers/demands.ts';
import { questions } from '../../generators/papers/export/data.ts';
import { makePaper } from '../../generators/papers/paper.ts';
import { pool } from '../../generators/papers/pool.ts';
import { versionView } from '../../generators/papers/view.ts';
import { streams } from '../../generators/random.ts';

/** One question of every form and family that a paper can have, in two versions. */
export function paperOfEveryForm() {
  const all = pool('sample');
  const set = all.filter(({ parts, form }, i) => all.findIndex((other) => other.form === form && other.parts[0]!.family === parts[0]!.family) === i);
  const words = loadPaperWords('en');
  const versions = makePaper({ set, pool: all, demands: {}, whose: [{ name: 'A' }, { name: 'B' }], isClass: false, used: new Set() }, streams('export'));
  const content = { wordsOf: (family: string) => loadFamilyWords('en', family), shared: loadQuestionWords('en'), figures: loadFigureWords('en'), stories: words.stories, parts: words.parts };
  const views = versions.map((version, v) => versionView(version, v, content));
  const table = markTable(set);
  const data = questions('=Title & "sons" <1>', 'sample', table, versions, views);
  const parts = data.versions.flatMap((version) => version.questions.flatMap((one) => one.parts));
  return { words, views, table, data, parts };
}
