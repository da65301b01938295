import type { Experiment, Observed } from '../experiments/experiment.ts';
import { experimentNamed } from '../experiments/index.ts';
import type { Balance } from '../experiments/plan.ts';
import { UserMistake } from '../mistake.ts';
import type { Order } from '../order/schema.ts';
import { writeWireAsk } from '../order/wire-ask.ts';
import { mean } from '../quantities/summary.ts';
import { streams } from '../random.ts';
import { openPress } from '../press/print.ts';
import { temporaryFolder } from '../press/whole-folder.ts';
import { conventions } from '../sheets/conventions.ts';
import { type Issue, issueSheets, programOf } from '../sheets/issue.ts';
import { type Worked, workOut } from '../sheets/worked.ts';
import { type Asked, readAsked } from './asked.ts';
import type { Command } from './command.ts';
import { loadWords } from './content.ts';
import { orderHelp } from './help.ts';
import { makePrinter } from './pack-files.ts';
import { one, planTable, resultName, three } from './plan-words.ts';
import { silent } from './progress.ts';
import { type PlannedWires, planWires } from './wires.ts';

export const plan: Command = {
  usage: 'plan ORDER.yaml',
  about: 'what a pack would give, before anything is printed: X, R and null points, uncertainty, paper, and how far sets lie apart',
  help: () => orderHelp(plan, []),
  async run(args) {
    const asked = readAsked(args, []);
    for (const notice of asked.notices) process.stderr.write(`${notice}\n`);
    const experiment = experimentNamed(asked.order.experiment);
    const { usable, refused } = planWires(asked);
    for (const planned of usable) process.stdout.write(`${[planned.wires.map(writeWireAsk).join(' and '), ...planInWords(asked, planned, experiment)].join('\n    ')}\n`);
    if (refused.length > 0) throw new UserMistake(refused);
    const issues = dryRun(asked, experiment);
    process.stdout.write(`${apartInWords(issues, asked.students.length, experiment)}\n`);
    process.stdout.write(`${await paperInWords(asked, issues)}\n`);
  },
};

function planInWords({ order }: Asked, { ask, plan }: PlannedWires, experiment: Experiment): string[] {
  return [
    ...(plan.balances.length > 0 ? [planTable(plan)] : []),
    ...plan.balances.map(rangeInWords),
    ...(experiment.layout.uncertain.length > 0 ? [uncertaintyInWords(order, ask, experiment)] : []),
  ];
}

function rangeInWords({ of, usable }: Balance): string {
  const first = usable[0]!;
  const last = usable.at(-1)!;
  return `usable${of === undefined ? '' : ` for ${of}`}: ${usable.length} settings from ${first.R} Ω (null at ${one(first.l)} cm) to ${last.R} Ω (${one(last.l)} cm)`;
}

/** The worst case on ideal readings, and the 95 % interval that a set of readings states on the average. */
function uncertaintyInWords(order: Order, ask: PlannedWires['ask'], experiment: Experiment): string {
  const { form, readings } = experiment.ideal(ask);
  const ideal = worked(order, ask, experiment, { form, readings });
  const trials = Array.from({ length: TRIALS }, (_, i) => experiment.observe(ask, streams('plan').within('trial', i)));
  const sets = trials.flatMap((observed) => (observed ? [worked(order, ask, experiment, observed)] : []));
  const { values } = loadWords(order.language, experiment.id).experiment;
  const size = (one: Worked, id: string) => Math.abs(one.cells(id)[0]!.exact);
  const list = (error: (one: Worked, id: string) => number, of: readonly Worked[]) =>
    experiment.layout.uncertain
      .map((id) => {
        // Of a result that may be zero a percentage says nothing.
        const small = sets.some((one) => size(one, id) < SMALL * one.budget(id).expanded);
        const { unit } = ideal.program.step(id);
        return `${resultName(id, values)} ± ${three(mean(of.map((one) => (small ? error(one, id) : (100 * error(one, id)) / size(one, id)))))} ${small ? unit : '%'}`.trim();
      })
      .join(', ');
  return [
    `maximum permissible error of the readings: ${list((one, id) => one.worst(id), [ideal])}`,
    `95 % interval, scatter and apparatus included: ${list((one, id) => one.budget(id).expanded, sets)}`,
  ].join('\n    ');
}

/** A result smaller than so many of its intervals may as well be near zero. */
const SMALL = 2;

/** Sets of readings that are tried for the plan. */
const TRIALS = 25;

function worked(order: Order, ask: PlannedWires['ask'], experiment: Experiment, { form, readings }: Pick<Observed, 'form' | 'readings'>): Worked {
  const program = programOf(experiment, { form });
  return workOut(
    { format: 1, edition: experiment.edition, experiment: experiment.id, origin: 'generated', form, readings, conventions: conventions(order, ask, experiment, program.steps) },
    program,
  );
}

/** What a class of this size would get: with a chosen seed these very sheets, else such sheets under a secret that no pack uses. */
function dryRun({ order, students, tables }: Asked, experiment: Experiment): Issue[] {
  const recipients = students.length > 0 ? students : Array.from({ length: 30 }, (_, i) => ({ roll: String(i + 1), name: '' }));
  return issueSheets({ order, experiment, tables, secret: order.seed ?? 'plan' }, recipients);
}

function apartInWords(issues: readonly Issue[], students: number, { layout }: Experiment): string {
  const apart = issues.filter(({ shared }) => shared.length === 0).length;
  const whom = students > 0 ? `${students} students of the class list` : `${issues.length} students`;
  // The sheets before the first that had to share an answer stand apart from each other.
  const rolls = issues.map(({ roll }) => roll);
  const first = issues.findIndex(({ shared }, place) => shared.some(({ roll }) => rolls.indexOf(roll) < place));
  const materials = new Set(issues.flatMap(({ wires }) => wires.map((wire) => wire.split(',')[0])));
  const alloys = layout.answers.includes('rho') ? ` Sets of one material share its resistivity: ${[...materials].join(', ')}.` : '';
  if (layout.apart.length === 0) return `All ${whom} get sets drawn by lot, each in an order of its own; no single answer is kept apart from those of the others.`;
  if (first === -1) return `All ${whom} get sets of their own: no row or result that tells sheets apart would be accepted on another's sheet.${alloys}`;
  return `These wires and this box keep about ${first} students apart: with number ${first + 1} comes the first right answer that an earlier sheet would accept too. Of the ${whom}, ${apart} share no right answer with anyone. More wires, or wires of more gauges, keep more apart.${alloys}`;
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
