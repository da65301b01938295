import { describe, expect, it } from 'vitest';
import { faultsIn } from '../../generators/quantities/finished.ts';
import { type FinishedSheet, judgeInstead, judgedAs, mistakesAt, mistakesIn, writtenIn } from '../../generators/practice/finished-record.ts';
import { round } from '../../generators/quantities/written.ts';
import { setCode } from '../../generators/practice/set-code.ts';
import { setOf } from './pages.ts';

const records = Array.from({ length: 16 }, (_, i) => {
  const { set, ...rest } = setOf('find-the-faults', setCode(i));
  const sheet = set.sheet as FinishedSheet;
  return { sheet, ...rest, mistakes: mistakesIn(sheet, rest.steps, rest.places) };
});

describe('a finished record', () => {
  it('has a place for every value that was worked out, so that every mistake can be found', () => {
    for (const { sheet, steps, places, mistakes } of records) {
      const faults = faultsIn(steps, sheet.readings, sheet.conventions, sheet.finished);
      expect([...mistakes.keys()]).toEqual(faults.map(({ id, row }) => `${id}:${row}`));
      for (const { id, slip } of faults) expect(mistakesAt(steps, id)).toContain(slip);
      expect(Object.keys(writtenIn(sheet.finished, places)).length).toBe(Object.values(sheet.finished).flat().length);
    }
  });

  it('offers at each mistake more than the names that fit it', () => {
    for (const { steps, mistakes } of records) for (const [key, names] of mistakes) expect(mistakesAt(steps, key.split(':')[0]!).filter((each) => !names.includes(each)).length, key).toBeGreaterThan(0);
  });

  it('takes the value of a record that is right throughout, and does not take what stands there', () => {
    for (const { sheet, steps, places, right, mistakes } of records) {
      for (const place of places.filter(({ key }) => mistakes.has(key))) {
        expect(judgeInstead(sheet, steps, places, { [place.key]: right[place.key]! }, place), place.key).toMatchObject({ is: 'right', byTheKey: false, extraFigures: 0 });
        const asItStands = judgeInstead(sheet, steps, places, { [place.key]: writtenIn(sheet.finished, places)[place.key]! }, place);
        // Too many digits are no wrong value.
        if (mistakes.get(place.key)![0] === 'too many digits') expect(asItStands).toMatchObject({ is: 'right' });
        else expect(asItStands.is, place.key).toBe('wrong');
      }
    }
  });

  it('takes a value on the record as it stands, and on what was put right before', () => {
    const { sheet, steps, places, mistakes } = records.find((each) => each.mistakes.has('rho:0') && [...each.mistakes.keys()].some((key) => key.startsWith('d:')))!;
    const rho = places.find(({ key }) => key === 'rho:0')!;
    const d = [...mistakes.keys()].find((key) => key.startsWith('d:'))!;
    const on = (diameter: number) => {
      const meanX = Number(sheet.finished['meanX']![0]);
      return round((3.14159265 * (diameter * 1e-3) ** 2 * meanX) / (4 * Number(sheet.readings['L']) * 1e-2), { figures: 3 }, 'even');
    };
    const wrote = Number(sheet.finished['d']![0]);
    expect(judgeInstead(sheet, steps, places, { 'rho:0': on(wrote) }, rho).is).toBe('right');
    const corrected = round(Number(sheet.finished['meanD']![0]) - Number(sheet.finished['e']![0]), { decimals: 3 }, 'even');
    expect(judgeInstead(sheet, steps, places, { [d]: corrected, 'rho:0': on(Number(corrected)) }, rho).is).toBe('right');
  });

  it('says of a judgement nothing, right or wrong', () => {
    expect([judgedAs('', true), judgedAs('mistake', true), judgedAs('follows', false), judgedAs('mistake', false), judgedAs('follows', true)].map(({ is }) => is)).toEqual(['empty', 'right', 'right', 'wrong', 'wrong']);
  });
});
