import type { Body, Family, Work } from '../family.ts';
import { bridgeWire, nullPoint } from '../kinds.ts';

/** Resistivities at 20 °C: copper, iron, manganin, constantan, nichrome (OpenStax University Physics, volume 2, table of resistivities). */
export const RESISTIVITIES = ['1.68e-8', '9.71e-8', '4.82e-7', '4.9e-7', '1.00e-6'] as const;
/** Diameters of SWG 22, 24, 26, 28, 30 and 32 in mm (BS 3737). */
export const DIAMETERS = ['0.711', '0.559', '0.457', '0.376', '0.315', '0.274'] as const;

const rho = (tex: string) => ({ tex, unit: 'Ω m', values: RESISTIVITIES, neat: 'any' as const, printed: [1e-8, 1.5e-6] as const });
const length = (tex: string) => ({ tex, unit: 'm', values: ['0.50', '0.60', '0.75', '0.80', '1.00', '1.20', '1.50'], neat: 'any' as const, printed: [0.2, 3] as const });
const diameter = (tex: string) => ({ tex, unit: 'mm', values: DIAMETERS, neat: 'any' as const, printed: [0.2, 1] as const });

const area = (tex: string) => ({ tex, unit: 'mm²', values: ['0.10', '0.12', '0.15', '0.20', '0.25', '0.30', '0.40', '0.50'], neat: 'any' as const, printed: [0.01, 5] as const });

/** The ratio of the parts of the wire is that of the resistances. */
const fromNull: Work = { id: 'k', as: 'l / (W - l)', slips: { 'ratio inverted': '(W - l) / l' } };

/** Two wires of other materials, lengths and thicknesses in the two gaps; their diameters or their cross-sections are told. */
export const materials: Family = {
  id: 'materials',
  tags: ['metre-bridge', 'wires'],
  choices: { section: ['diameter', 'area'] },
  body: ({ section }): Body => {
    const round = section === 'diameter';
    const [s1, s2] = round ? ['d1^2', 'd2^2'] : ['A1', 'A2'];
    return {
      quantities: {
        rho1: rho('\\rho_1'),
        L1: length('L_1'),
        ...(round ? { d1: diameter('d_1') } : { A1: area('A_1') }),
        rho2: rho('\\rho_2'),
        L2: length('L_2'),
        ...(round ? { d2: diameter('d_2') } : { A2: area('A_2') }),
        k: { tex: 'k', unit: '' },
        l: { ...nullPoint('l'), neat: 'any', digits: { decimals: 1 } },
        W: bridgeWire,
      },
      condition: [`rho1 * L1 * ${s2} * (W - l) = rho2 * L2 * ${s1} * l`],
      asks: {
        null: {
          finds: ['l'],
          algebra: 2,
          steps: [
            {
              id: 'k',
              as: `rho1 * L1 * ${s2} / (rho2 * L2 * ${s1})`,
              slips: { ...(round && { 'diameter not squared': 'rho1 * L1 * d2 / (rho2 * L2 * d1)' }), [round ? 'diameters exchanged' : 'cross-sections exchanged']: `rho1 * L1 * ${s1} / (rho2 * L2 * ${s2})` },
            },
            { id: 'l', as: 'W * k / (1 + k)', slips: { 'wrong end': 'W / (1 + k)' } },
          ],
        },
        resistivity: { finds: ['rho1'], algebra: 2, steps: [fromNull, { id: 'rho1', as: `k * rho2 * L2 * ${s1} / (L1 * ${s2})`, slips: unlike(round, 'k * rho2 * L2 * d1 / (L1 * d2)', 'k * rho2 * L2 * A2 / (L1 * A1)') }] },
        length: { finds: ['L1'], algebra: 2, steps: [fromNull, { id: 'L1', as: `k * rho2 * L2 * ${s1} / (rho1 * ${s2})`, slips: unlike(round, 'k * rho2 * L2 * d1 / (rho1 * d2)', 'k * rho2 * L2 * A2 / (rho1 * A1)') }] },
        ...(round
          ? { diameter: { finds: ['d1'], algebra: 2 as const, steps: [fromNull, { id: 'd1', as: 'd2 * sqrt(rho1 * L1 / (k * rho2 * L2))', slips: { 'root not taken': 'd2 * rho1 * L1 / (k * rho2 * L2)' } }] } }
          : { 'cross-section': { finds: ['A1'], algebra: 2 as const, steps: [fromNull, { id: 'A1', as: 'A2 * rho1 * L1 / (k * rho2 * L2)', slips: { 'lengths exchanged': 'A2 * rho1 * L2 / (k * rho2 * L1)' } }] } }),
      },
    };
  },
};

const unlike = (round: boolean, notSquared: string, exchanged: string) => (round ? { 'diameter not squared': notSquared } : { 'cross-sections exchanged': exchanged });
