import { UserMistake, type Mistake, type Place } from '../mistake.ts';
import { allMistakes } from './all-mistakes.ts';
import { checkOrder, fieldName, type WhereIs } from './check.ts';
import { orderFlags, type Flags, type OrderFlag } from './flags.ts';
import type { Known } from './known.ts';
import type { Order } from './schema.ts';
import { readYaml } from './yaml-text.ts';

type Values = Record<string, unknown>;

/**
 * The order in a YAML file, with what the flags say in place of what the file says.
 * Throws a UserMistake that lists every problem with its line and entry.
 */
export function readOrder(text: string, fileName: string, known: Known, flags: Flags = {}): Order {
  const file = readYaml(text, fileName);
  const given = givenFlags(flags, known);
  const whereIs: WhereIs = (path) => placeOfFlag(path, given) ?? { file: fileName, ...placeInFile(path, file.rowOf(path)) };
  const values = file.values ?? {};
  if (file.mistakes.length === 0 && given.length === 0 && isValues(values) && Object.keys(values).length === 0) throw new UserMistake([{ file: fileName, what: SAYS_NOTHING }]);
  const found = isValues(values) ? withFlags(values, given) : values;
  return settled(() => checkOrder(found, known, whereIs), file.mistakes);
}

/** The order that flags alone give; the same as from a file with the same entries. */
export function orderFromFlags(flags: Flags, known: Known): Order {
  const given = givenFlags(flags, known);
  return checkOrder(withFlags({}, given), known, (path) => placeOfFlag(path, given) ?? { field: fieldName(path) });
}

const SAYS_NOTHING = 'says nothing; write at least which experiment, such as "experiment: resistivity"';

type Given = { flag: OrderFlag; value: unknown };

function givenFlags(flags: Flags, known: Known): Given[] {
  return orderFlags(known).flatMap((flag) => {
    const value = flags[flag.name];
    return value === undefined ? [] : [{ flag, value }];
  });
}

function withFlags(values: Values, given: readonly Given[]): Values {
  const out = { ...values };
  for (const { flag: { path: [outer, inner] }, value } of given) {
    if (outer === undefined) continue;
    const below = out[outer];
    out[outer] = inner === undefined ? value : { ...(isValues(below) && below), [inner]: value };
  }
  return out;
}

function placeOfFlag(path: readonly PropertyKey[], given: readonly Given[]): { field: string } | undefined {
  const found = given.find(({ flag }) => flag.path.every((key, i) => key === path[i]));
  return found && { field: `--${found.flag.name}` };
}

function placeInFile(path: readonly PropertyKey[], row: number | undefined): Place {
  return { ...(row !== undefined && { row }), ...(path.length > 0 && { field: fieldName(path) }) };
}

function isValues(value: unknown): value is Values {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** What `read` gives, unless there are earlier mistakes, to which its own are added. */
function settled(read: () => Order, earlier: readonly Mistake[]): Order {
  const order = attempt(read);
  const mistakes = [...earlier, ...(order instanceof UserMistake ? order.mistakes : [])];
  if (mistakes.length > 0 || order instanceof UserMistake) throw allMistakes(mistakes);
  return order;
}

function attempt(read: () => Order): Order | UserMistake {
  try {
    return read();
  } catch (error) {
    if (error instanceof UserMistake) return error;
    throw error;
  }
}
