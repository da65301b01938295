import type { Family } from '../family.ts';
import { bridgeWire, ohms } from '../kinds.ts';

/** The fall of potential along the bridge wire, fed by a cell through a resistor. */
export const gradient: Family = {
  id: 'gradient',
  tags: ['currents', 'wires'],
  body: {
    quantities: {
      E: { tex: 'E', unit: 'V', values: ['1.5', '2.0', '3.0', '4.0', '6.0'] },
      R: ohms('R', ['2.0', '4.0', '5.0', '6.0', '8.0', '10', '15', '20', '35', '45']),
      w: ohms('R_w', ['2.0', '4.0', '5.0', '8.0', '10', '12', '15', '20']),
      I: { tex: 'I', unit: 'A' },
      k: { tex: 'k', unit: 'V/cm', values: ['0.0020', '0.0050', '0.010', '0.0080', '0.0040'] },
      l: { tex: 'l', unit: 'cm', values: { from: 20, to: 80, step: '5' }, between: ['0', 'W'] },
      V: { tex: 'V', unit: 'V' },
      W: bridgeWire,
    },
    condition: ['E = I * (R + w)', 'k * W * (R + w) = E * w', 'V = k * l'],
    asks: {
      gradient: { finds: ['k'], algebra: 1, steps: [{ id: 'I', as: 'E / (R + w)', slips: { 'wire left out of the circuit': 'E / R' } }, { id: 'k', as: 'I * w / W', slips: { 'whole voltage on the wire': 'E / W' } }] },
      resistor: { finds: ['R'], algebra: 2, steps: [{ id: 'I', as: 'k * W / w' }, { id: 'R', as: 'E / I - w', slips: { 'wire not taken off': 'E / I' } }] },
      place: {
        finds: ['l'],
        algebra: 2,
        drawnBy: 'part',
        steps: [{ id: 'I', as: 'E / (R + w)', slips: { 'wire left out of the circuit': 'E / R' } }, { id: 'k', as: 'I * w / W' }, { id: 'l', as: 'V / k', slips: { 'whole voltage on the wire': 'V * W / E' } }],
      },
      part: {
        finds: ['V'],
        algebra: 1,
        steps: [{ id: 'I', as: 'E / (R + w)', slips: { 'wire left out of the circuit': 'E / R' } }, { id: 'k', as: 'I * w / W' }, { id: 'V', as: 'k * l', slips: { 'whole wire taken': 'k * W' } }],
      },
    },
  },
};
