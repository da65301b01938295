import type { Family } from '../family.ts';
import { bridgeWire, gaps, nullAt, partsAt, nullPoint } from '../kinds.ts';

/** Kelvin's method: the galvanometer itself in one gap; its deflection does not change where the bridge is balanced. */
export const kelvin: Family = {
  id: 'kelvin',
  tags: ['metre-bridge', 'instruments'],
  choices: gaps,
  body: (choice) => {
    const { own, other } = partsAt(choice, 'l');
    const ohms = (tex: string) => ({ tex, unit: 'Ω', values: ['20', '30', '40', '50', '60', '75', '80', '90', '100', '120'] });
    return {
      quantities: { G: ohms('G'), R: ohms('R'), l: nullPoint('l'), W: bridgeWire },
      condition: [`G * ${other} = R * ${own}`],
      asks: {
        galvanometer: { finds: ['G'], algebra: 1, steps: [{ id: 'G', as: `R * ${own} / ${other}`, slips: { 'ratio inverted': `R * ${other} / ${own}`, 'divided by the whole wire': `R * ${own} / W` } }] },
        known: { finds: ['R'], algebra: 1, steps: [{ id: 'R', as: `G * ${other} / ${own}`, slips: { 'ratio inverted': `G * ${own} / ${other}` } }] },
        place: { finds: ['l'], algebra: 1, steps: [{ id: 'l', as: nullAt(choice, 'W * G / (G + R)'), slips: { 'wrong end': nullAt(choice, 'W * R / (G + R)') } }] },
      },
    };
  },
};
