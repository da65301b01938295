import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readWireAsk, writeWireAsk, type WireAsk } from '../../generators/order/wire-ask.ts';
import { known } from './known.ts';
import { linesOf } from './lines.ts';

const swg28 = { material: 'constantan', gauge: { system: 'SWG', number: 28 }, lengthCm: 60 };
const manganin = { material: 'manganin', gauge: { mm: '0.38' }, lengthCm: 80 };

describe('a wire is read', () => {
  test.each<[string, unknown]>([
    ['constantan, SWG 28, 60 cm', swg28],
    ['CONSTANTAN,swg28,60CM', swg28],
    ['60 cm of constantan wire, 28 SWG', swg28],
    ['SWG 28 constantan 0.6 m', swg28],
    ['constantan; S.W.G. 28; 60 cm', swg28],
    ['constantan / SWG: 28 / 60 cm', swg28],
    ['constantan - SWG-28 - 60 cm', swg28],
    ['constantan-SWG 28 - 60 cm long', swg28],
    ['constantan, swg 28, +60 cm', swg28],
    ['constantan, SWG No. 28, 60 cms', swg28],
    ['SWG 28,60 cm,constantan', swg28],
    ['constantan, ＳＷＧ ２８, ６０ ｃｍ', swg28],
    ['constantan (SWG 28), length 60.0 cm', swg28],
    ['manganin, 0.38 mm, 0.8 m', manganin],
    ['manganin, 0,38 mm, 0,8 m', manganin],
    ['manganin .38mm 80cm', manganin],
    ['manganin, 0.38 mm dia, 80 centimetres', manganin],
    ['manganin, 00.38 mm, 0.80 metres', manganin],
    ['nichrome, AWG 30, 50 cm', { material: 'nichrome', gauge: { system: 'AWG', number: 30 }, lengthCm: 50 }],
    ['German  Silver, 0.350 mm, 1 m', { material: 'german silver', gauge: { mm: '0.350' }, lengthCm: 100 }],
    ['german-silver, 0.350 mm, 1 m', { material: 'german silver', gauge: { mm: '0.350' }, lengthCm: 100 }],
    ['constantan, SWG 28, 0.557 m', { ...swg28, lengthCm: 55.7 }],
    ['constantan, SWG 28, 5 cm', { ...swg28, lengthCm: 5 }],
    ['constantan, SWG 28, 10 m', { ...swg28, lengthCm: 1000 }],
  ])('%s', (text, ask) => {
    expect(readWireAsk(text, known)).toEqual(ask);
  });

  test('and comes back from the words that it is written in', () => {
    const gauge = fc.oneof(
      fc.constantFrom(...known.gauges.SWG).map((number) => ({ system: 'SWG' as const, number })),
      fc.constantFrom(...known.gauges.AWG).map((number) => ({ system: 'AWG' as const, number })),
      fc.integer({ min: 50, max: 3000 }).map((micrometres) => ({ mm: String(micrometres / 1000) })),
    );
    const wire: fc.Arbitrary<WireAsk> = fc.record({
      material: fc.constantFrom(...known.materials),
      gauge,
      lengthCm: fc.integer({ min: 50, max: 10_000 }).map((mm) => mm / 10),
    });
    fc.assert(fc.property(wire, (ask) => {
      expect(readWireAsk(writeWireAsk(ask), known)).toEqual(ask);
    }));
  });
});

const WHOLE = 'write the whole wire, such as "constantan, SWG 28, 60 cm"';
const ONE = 'give one wire, such as constantan, SWG 28, 60 cm';
const CHOOSE = 'choose from constantan, manganin, nichrome, german silver';
const UNITS = 'has no unit that a wire is given in (SWG, AWG, cm, mm, m)';

describe('a wire is refused with what to do', () => {
  test.each<[string, ...string[]]>([
    ['', `"" gives no material and no thickness and no length; ${WHOLE}`],
    ['constantan', `"constantan" gives no thickness and no length; ${WHOLE}`],
    ['SWG 28, 60 cm', `"SWG 28, 60 cm" gives no material; ${WHOLE}`],
    ['constantan, 60 cm', `"constantan, 60 cm" gives no thickness; ${WHOLE}`],
    ['constantan, SWG 28', `"constantan, SWG 28" gives no length; ${WHOLE}`],
    ['nicrome, SWG 28, 60 cm', 'no material "nicrome"; did you mean nichrome?'],
    ['Konstantan, SWG 28, 60 cm', 'no material "Konstantan"; did you mean constantan?'],
    ['maganin, SWG 28, 60 cm', 'no material "maganin"; did you mean manganin?'],
    ['unobtainium, SWG 28, 60 cm', `no material "unobtainium"; ${CHOOSE}`],
    ['constantan manganin, SWG 28, 60 cm', `no material "constantan manganin"; ${CHOOSE}`],
    ['constantan, SWG 99, 60 cm', 'SWG 99 is not in the table, which goes from 22 to 34; give another gauge or the diameter in mm'],
    ['constantan, SWG 28.5, 60 cm', 'SWG 28.5 is not in the table, which goes from 22 to 34; give another gauge or the diameter in mm'],
    ['constantan, AWG 29, 60 cm', 'AWG 29 is not in the table, which goes from 20 to 30; give another gauge or the diameter in mm'],
    ['constantan, swq 28, 60 cm', '28 stands without a unit; write SWG or AWG before a gauge, mm after a diameter, cm or m after a length', `no material "constantan swq"; ${CHOOSE}`],
    ['constantan, 28 swq, 60 cm', `"28 swq" ${UNITS}; did you mean SWG?`],
    ['constantan, 28, 60 cm', '28 stands without a unit; write SWG or AWG before a gauge, mm after a diameter, cm or m after a length'],
    ['constantan, SWG 28, 60', '60 stands without a unit; write SWG or AWG before a gauge, mm after a diameter, cm or m after a length'],
    ['constantan, SWG 28, 60 inches', `"60 inches" ${UNITS}`],
    ['constantan, SWG 28, 60 cmm', `"60 cmm" ${UNITS}; did you mean cm?`],
    ['constantan, SWG 28, 0 cm', '0 cm is not above zero; give the size of a real wire'],
    ['constantan, SWG 28, -60 cm', '-60 cm is not above zero; give the size of a real wire'],
    ['constantan, SWG 28, −0.6 m', '-0.6 m is not above zero; give the size of a real wire'],
    ['constantan, 0.00 mm, 60 cm', '0.00 mm is not above zero; give the size of a real wire'],
    ['constantan, SWG 28, 2 cm', 'a length of 2 cm is out of reach; give one from 5 to 1000 cm'],
    ['constantan, SWG 28, 60 m', 'a length of 6000 cm is out of reach; give one from 5 to 1000 cm'],
    ['constantan, SWG 28, 1000000000000000000000000 m', 'a length of 1e+26 cm is out of reach; give one from 5 to 1000 cm'],
    ['constantan, SWG 28, 60.25 cm', 'a length of 60.25 cm is finer than a metre rule reads; give it to 0.1 cm'],
    ['constantan, 0.01 mm, 60 cm', 'a diameter of 0.01 mm is out of reach; give one from 0.05 to 3 mm'],
    ['constantan, 38 mm, 60 cm', 'a diameter of 38 mm is out of reach; give one from 0.05 to 3 mm'],
    ['constantan, 0.37612 mm, 60 cm', '0.37612 mm is finer than a wire is measured; give four decimals at most'],
    ['constantan, SWG 28, 60 cm, 70 cm', `"constantan, SWG 28, 60 cm, 70 cm" gives more than one length; ${ONE}`],
    ['constantan, SWG 28, 0.38 mm, 60 cm', `"constantan, SWG 28, 0.38 mm, 60 cm" gives more than one thickness; ${ONE}`],
    ['constantan, #28, 60 cm', '"#28" is not part of a wire; leave it out'],
    ['constantan, SWG 28, ~60 cm', '"~60" is not part of a wire; leave it out'],
    ['constantan, SWG 28, 1e2 cm', `"1e2" ${UNITS}`],
    ['nicrome, SWG 99, -1 cm', '-1 cm is not above zero; give the size of a real wire', 'no material "nicrome"; did you mean nichrome?', 'SWG 99 is not in the table, which goes from 22 to 34; give another gauge or the diameter in mm'],
    ['<script>alert(1)</script>, SWG 28, 60 cm', '"<script>alert(1)</script>" is not part of a wire; leave it out'],
    ['\\input{x}, SWG 28, 60 cm', '"\\input{x}" is not part of a wire; leave it out'],
  ])('%s', (text, ...lines) => {
    expect(linesOf(() => readWireAsk(text, known))).toEqual(lines);
  });
});
