import type { Family } from '../family.ts';
import { bridgeWire, gaps, nullAt, nullPoint, ohms, partsAt } from '../kinds.ts';

/** Temperature coefficients referred to 0 °C, of the order of those of pure metals; rounded, common practice, no source. */
export const COEFFICIENTS = ['0.0020', '0.0024', '0.0025', '0.0030', '0.0032', '0.0035', '0.0040', '0.0045', '0.0048', '0.0050', '0.0060', '0.0075'] as const;

const celsius = (tex: string, values: readonly string[], fixed?: string) => ({ tex, unit: '°C', values, between: ['-273.15', undefined] as const, neat: 5, printed: [0, 400] as const, ...(fixed !== undefined && { fixed }) });

/** A coil in one gap at two temperatures, the other gap unchanged; α is referred to 0 °C. */
export const temperature: Family = {
  id: 'temperature',
  tags: ['metre-bridge', 'temperature'],
  choices: gaps,
  body: (choice) => {
    const before = partsAt(choice, 'l1');
    const after = partsAt(choice, 'l2');
    const k = { id: 'k', as: `${after.own} * ${before.other} / (${before.own} * ${after.other})`, slips: { 'lengths compared alone': `${after.own} / ${before.own}` } };
    const hotCoil = (slip: string) => ({ id: 'X2', as: `Y * ${after.own} / ${after.other}`, slips: { [slip]: `Y * ${after.other} / ${after.own}` } });
    const coefficient = { id: 'alpha', as: '(X2 - X1) / (X1 * t2 - X2 * t1)', slips: { 'over the hot resistance': '(X2 - X1) / (X2 * (t2 - t1))' } };
    return {
      quantities: {
        Y: ohms('Y'),
        X1: { tex: 'X_1', unit: 'Ω', values: ['2.0', '4.0', '5.0', '8.0', '10', '12', '15', '20'] },
        X2: { tex: 'X_2', unit: 'Ω' },
        l1: nullPoint('l_1'),
        l2: nullPoint('l_2'),
        t1: celsius('t_1', ['0', '20', '25'], '0'),
        t2: celsius('t_2', ['40', '50', '60', '75', '80', '100', '120', '150', '200']),
        alpha: { tex: '\\alpha', unit: '/°C', values: COEFFICIENTS, between: [undefined, undefined], printed: [0.001, 0.01] },
        k: { tex: 'k', unit: '' },
        W: bridgeWire,
      },
      condition: [`(1 + alpha * t2) * ${before.own} * ${after.other} = (1 + alpha * t1) * ${after.own} * ${before.other}`, `X1 * ${before.other} = Y * ${before.own}`, 'X2 * (1 + alpha * t1) = X1 * (1 + alpha * t2)'],
      holds: { 'the two temperatures differ': '(t2 - t1)^2' },
      asks: {
        coefficient: {
          finds: ['alpha'],
          algebra: 3,
          drawnBy: 'null',
          steps: [
            { id: 'X1', as: `Y * ${before.own} / ${before.other}`, slips: { 'ratio inverted': `Y * ${before.other} / ${before.own}` } },
            hotCoil('ratio inverted in the second'),
            coefficient,
          ],
        },
        'coefficient from the ratio': { finds: ['alpha'], algebra: 3, drawnBy: 'null', steps: [k, { id: 'alpha', as: '(k - 1) / (t2 - k * t1)', slips: { 'over the hot resistance': '(k - 1) / (k * (t2 - t1))' } }] },
        null: {
          finds: ['l2'],
          algebra: 2,
          steps: [
            { id: 'k', as: '(1 + alpha * t2) / (1 + alpha * t1)' },
            { id: 'l2', as: nullAt(choice, `W * k * ${before.own} / (k * ${before.own} + ${before.other})`), slips: { 'null scaled with the resistance': nullAt(choice, `k * ${before.own}`), 'other gap changed': nullAt(choice, `W * ${before.own} / (${before.own} + k * ${before.other})`) } },
          ],
        },
        'null from the resistance': {
          finds: ['l2'],
          algebra: 2,
          steps: [
            { id: 'X2', as: 'X1 * (1 + alpha * t2) / (1 + alpha * t1)' },
            { id: 'l2', as: nullAt(choice, 'W * X2 / (X2 + Y)'), slips: { 'wrong end': nullAt(choice, 'W * Y / (X2 + Y)'), 'coil taken as cold': nullAt(choice, 'W * X1 / (X1 + Y)') } },
          ],
        },
        'hot from the resistance': { finds: ['t2'], algebra: 2, drawnBy: 'null from the resistance', steps: [hotCoil('ratio inverted'), { id: 't2', as: '((1 + alpha * t1) * X2 / X1 - 1) / alpha', slips: { 'one not taken off': '(1 + alpha * t1) * X2 / (X1 * alpha)' } }] },
        'coefficient from the resistance': { finds: ['alpha'], algebra: 3, drawnBy: 'null from the resistance', steps: [hotCoil('ratio inverted'), coefficient] },
        hot: { finds: ['t2'], algebra: 2, drawnBy: 'null', steps: [k, { id: 't2', as: '(k * (1 + alpha * t1) - 1) / alpha', slips: { 'one not taken off': 'k * (1 + alpha * t1) / alpha' } }] },
      },
    };
  },
};
