import { describe, expect, test } from 'vitest';
import { readBench } from '../../generators/apparatus/bench.ts';
import { makeBridge } from '../../generators/apparatus/bridge.ts';
import { UserMistake } from '../../generators/mistake.ts';
import { streams } from '../../generators/random.ts';
import { rawTable } from './tables.ts';

type Table = Record<string, Record<string, any>>;

function edited(edit: (table: Table) => void): () => unknown {
  const table = rawTable('apparatus.yaml') as Table;
  edit(table);
  return () => readBench(table, 'our-bench.yaml');
}

describe('the apparatus of a teacher', () => {
  test('may give one value where the table gives two limits', () => {
    const read = edited((table) => {
      table.bridge!.endCorrection = { value: 0.31, unit: 'cm', source: 'our bench' };
    })() as ReturnType<typeof readBench>;
    expect(makeBridge(read, streams('ours').of(1)).endCorrection).toEqual({ left: 0.31, right: 0.31 });
  });

  test.each<[string, (table: Table) => void, string]>([
    ['in another unit', (t) => (t.bridge!.joint.unit = 'mΩ'), 'our-bench.yaml, bridge.joint.unit'],
    ['without a source', (t) => delete t.cell!.emf.source, 'our-bench.yaml, cell.emf.source'],
    ['below zero', (t) => (t.cell!.emf.value = -1.5), 'our-bench.yaml, cell.emf.value'],
    ['with its limits the wrong way round', (t) => t.room!.between.reverse(), 'the lower limit stands first'],
    ['with both a value and limits', (t) => (t.cell!.internal.value = 0.5), 'give either value or between'],
    ['with a plug that is no number', (t) => (t.box!.plugs.values[2] = 'two'), 'our-bench.yaml, box.plugs.values.2: write'],
    ['under an unknown name', (t) => (t.rule!.lenght = 1), 'our-bench.yaml, rule: Unrecognized key: "lenght"'],
    ['with a zero error in words', (t) => (t.screwGauge!.zeroErrors.values[0] = 'none'), 'our-bench.yaml, screwGauge.zeroErrors.values.0'],
    ['with a zero error of a whole turn', (t) => (t.screwGauge!.zeroErrors.values[0] = '-0.5'), 'our-bench.yaml, screwGauge: a zero error'],
    ['with a pitch that cannot be shared out', (t) => (t.screwGauge!.divisions.value = 30), 'our-bench.yaml, screwGauge: pitch ÷ divisions'],
  ])('is refused %s, saying where', (_, edit, message) => {
    expect(edited(edit)).toThrow(UserMistake);
    expect(edited(edit)).toThrow(message);
  });

  test('has all its mistakes told at once', () => {
    const read = edited((table) => {
      delete table.cell!.emf.source;
      table.rule!.division.value = 'mm';
    });
    expect(read).toThrow(/cell\.emf\.source.*\n.*rule\.division\.value/);
  });
});
