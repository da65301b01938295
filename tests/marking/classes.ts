import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { experimentNamed } from '../../generators/experiments/index.ts';
import { type Column, columnsOf } from '../../generators/marking/columns.ts';
import { type Entry, readEntry } from '../../generators/marking/entry.ts';
import { type Scheme, readScheme } from '../../generators/marking/scheme.ts';
import type { Order } from '../../generators/order/schema.ts';
import { readWireAsk } from '../../generators/order/wire-ask.ts';
import { type Issue, issueSheets } from '../../generators/sheets/issue.ts';
import { known, orderOf, tables } from '../sheets/class.ts';
import type { StudentRecord } from './honest.ts';

export const schemeNamed = (name: string): Scheme => readScheme(parse(readFileSync(`content/marks/${name}.yaml`, 'utf8')), `${name}.yaml`);

export const practical = schemeNamed('practical');

/** A class's sheets with the answers that decide. */
export interface SimulatedClass {
  order: Order;
  issues: Issue[];
  columns: Column[];
}

export function classOf(students: number, more: string, secret: string, scheme = practical, wires?: string[]): SimulatedClass {
  const asked = orderOf(more);
  const order = wires ? { ...asked, wires: wires.map((wire) => readWireAsk(wire, known)) } : asked;
  const experiment = experimentNamed(order.experiment);
  const recipients = Array.from({ length: students }, (_, i) => ({ roll: String(i + 1), name: `Student ${i + 1}` }));
  const issues = issueSheets({ order, experiment, tables, secret }, recipients);
  return { order, issues, columns: columnsOf(scheme, experiment, issues.map(({ sheet }) => sheet)) };
}

/** A student's record as it is typed, with units. */
export function typed(columns: readonly Column[], record: StudentRecord): Entry[] {
  return columns.map(({ id, row, unit }) => readEntry(`${record[id]![row]!} ${unit}`, 'point'));
}
