import type { Experiment } from '../experiments/experiment.ts';
import { experimentNamed } from '../experiments/index.ts';
import { UserMistake } from '../mistake.ts';
import type { Order } from '../order/schema.ts';
import { writeWireAsk } from '../order/wire-ask.ts';
import { openPress } from '../press/print.ts';
import { temporaryFolder } from '../press/whole-folder.ts';
import { conventions } from '../sheets/conventions.ts';
import { type Issue, issueSheets, programOf } from '../sheets/issue.ts';
import { workOut } from '../sheets/worked.ts';
import { type Asked, readAsked } from './asked.ts';
import type { Command } from './command.ts';
import { loadWords } from './content.ts';
import { orderHelp } from './help.ts';
import { makePrinter } from './pack-files.ts';
import { one, table, three } from './plan-words.ts';
import { silent } from './progress.ts';
import { type PlannedWire, planWires } from './wires.ts';

export const plan: Command = {
  usage: 'plan ORDER.yaml',
  about: 'what a pack would give, before anything is printed: X, R and null points, uncertainty, paper, and how far sets lie apart',
  help: () => orderHelp(plan, []),
  async run(args) {
    const asked = readAsked(args, []);
    for (const notice of asked.notices) process.stderr.write(`${notice}\n`);
    const experiment = experimentNamed(asked.order.experiment);
    const { usable, refused } = planWires(asked);
    for (const planned of usable) process.stdout.write(`${writeWireAsk(planned.wire)}\n    ${planInWords(asked, planned, experiment)}\n`);
    if (refused.length > 0) throw new UserMistake(refused);
    const issues = dryRun(asked, experiment);
    process.stdout.write(`${apartInWords(issues, asked.students.length)}\n`);
    process.stdout.write(`${await paperInWords(asked, issues)}\n`);
  },
};

function planInWords({ order }: Asked, { ask, plan }: PlannedWire, experiment: Experiment): string {
  const first = plan.usable[0]!;
  const last = plan.usable.at(-1)!;
  return [
    table(plan, ask.rows),
    `usable: ${plan.usable.length} settings from ${first.R} Ω (null at ${one(first.l)} cm) to ${last.R} Ω (${one(last.l)} cm)`,
    uncertaintyInWords(order, ask, experiment),
  ].join('\n    ');
}

/** Results as a terminal can show them. */
const SYMBOLS: Record<string, string> = { meanX: 'X', rho: 'ρ' };

/** Worst case and limits shared by all rows, on ideal readings; the scatter of real rows comes on top of the standard uncertainty. */
function uncertaintyInWords(order: Order, ask: PlannedWire['ask'], experiment: Experiment): string {
  const { form, readings } = experiment.ideal(ask);
  const program = programOf(experiment, { form });
  const sheet = { format: 1, edition: experiment.edition, experiment: experiment.id, origin: 'generated', form, readings, conventions: conventions(order, ask, experiment, program.steps) } as const;
  const worked = workOut(sheet, program);
  const percent = (id: string, error: number) => `${three((100 * error) / worked.cells(id)[0]!.exact)} %`;
  const parts = experiment.layout.uncertain.map((id) => `${SYMBOLS[id] ?? id} ${percent(id, worked.worst(id))}`);
  return `maximum permissible error: ${parts.join(', ')}`;
}

/** What a class of this size would get under a secret that no pack uses. */
function dryRun({ order, students, tables }: Asked, experiment: Experiment): Issue[] {
  const recipients = students.length > 0 ? students : Array.from({ length: 30 }, (_, i) => ({ roll: String(i + 1), name: '' }));
  return issueSheets({ order, experiment, tables, secret: 'plan' }, recipients);
}

function apartInWords(issues: readonly Issue[], students: number): string {
  const apart = issues.filter(({ shared }) => shared.length === 0).length;
  const whom = students > 0 ? `${students} students of the class list` : `${issues.length} students`;
  const first = issues.findIndex(({ shared }) => shared.length > 0);
  const materials = new Set(issues.map(({ wire }) => wire.split(',')[0]));
  const alloys = `Sets of one material share its resistivity: ${[...materials].join(', ')}.`;
  if (first === -1) return `All ${whom} get sets of their own: no right X, row or diameter of one would be accepted on another's sheet. ${alloys}`;
  return `Of the ${whom}, ${apart} get sets of their own; the first right answer that another sheet would accept comes with number ${first + 1}. More wires, or wires of more gauges, keep more apart. ${alloys}`;
}

/** Pages are counted on a sample that is really printed; where there is no browser, it says why. */
async function paperInWords(asked: Asked, issues: Issue[]): Promise<string> {
  try {
    const { worksheet, key } = await countPages(asked, issues);
    const paper = (pages: number) => `${issues.length} × ${pages} pages (${issues.length * Math.ceil(pages / 2)} sheets of paper printed on both sides, ${issues.length * pages} on one)`;
    return `Worksheets: ${paper(worksheet)}\nKeys: ${paper(key)}`;
  } catch (error) {
    if (error instanceof UserMistake) return `Paper not counted: ${error.message}`;
    throw error;
  }
}

function countPages({ order, tables }: Asked, issues: Issue[]): Promise<{ worksheet: number; key: number }> {
  return temporaryFolder(async (partial) => {
    const press = await openPress();
    try {
      const printer = makePrinter({ partial, press, order, tables, issues: issues.slice(0, 1), words: loadWords(order.language, order.experiment), progress: silent });
      return { worksheet: await printer.sample('worksheet'), key: await printer.sample('key') };
    } finally {
      await press.close();
    }
  });
}
