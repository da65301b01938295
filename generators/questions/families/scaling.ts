import type { Family } from '../family.ts';
import { bridgeWire, gaps, nullAt, nullPoint, partsAt, pure } from '../kinds.ts';

/** What one gap holds is replaced by k times as much. */
export const scaling: Family = {
  id: 'scaling',
  tags: ['metre-bridge'],
  choices: gaps,
  body: (choice) => {
    const before = partsAt(choice, 'l1');
    const after = partsAt(choice, 'l2');
    const right = choice['gap'] === 'right';
    return {
      quantities: {
        k: pure('k', ['2', '3', '4', '5', '6', '0.5', '0.25', '1.5']),
        l1: nullPoint('l_1'),
        l2: nullPoint('l_2'),
        s: { tex: 's', unit: 'cm', between: ['-W', 'W'], eitherWay: true },
        W: bridgeWire,
      },
      condition: [`k * ${before.own} * ${after.other} = ${after.own} * ${before.other}`, 's = l2 - l1'],
      holds: { 'something changes': '(k - 1)^2' },
      asks: {
        null: {
          finds: ['l2', 's'],
          algebra: 2,
          steps: [
            { id: 'l2', as: nullAt(choice, `W * k * ${before.own} / (k * ${before.own} + ${before.other})`), slips: { 'other gap changed': nullAt(choice, `W * ${before.own} / (${before.own} + k * ${before.other})`) } },
            { id: 's', as: 'l2 - l1' },
          ],
        },
        'null from equal gaps': {
          finds: ['l2', 's'],
          algebra: 2,
          steps: [
            { id: 'l1', as: 'W / 2' },
            { id: 'l2', as: right ? 'W / (1 + k)' : 'W * k / (1 + k)', slips: { 'other gap changed': right ? 'W * k / (1 + k)' : 'W / (1 + k)' } },
            { id: 's', as: 'l2 - l1', slips: { 'second null for the shift': 'l2' } },
          ],
        },
        before: {
          finds: ['l1'],
          algebra: 2,
          steps: [{ id: 'l1', as: nullAt(choice, `W * ${after.own} / (${after.own} + k * ${after.other})`), slips: { 'changed in the wrong sense': nullAt(choice, `W * k * ${after.own} / (k * ${after.own} + ${after.other})`) } }],
        },
        factor: {
          finds: ['k'],
          algebra: 2,
          steps: [{ id: 'k', as: `${after.own} * ${before.other} / (${before.own} * ${after.other})`, slips: { 'lengths compared alone': `${after.own} / ${before.own}` } }],
        },
      },
    };
  },
};
