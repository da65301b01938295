import type { Readings } from '../quantities/evaluate.ts';
import type { Instrument, Written } from '../quantities/step.ts';

/** Why an instrument cannot show a value, as it goes on after the value; nothing where it can. */
export function faultOnInstrument(instrument: Instrument | undefined, value: Written, readings: Readings): string | undefined {
  const number = Number(value);
  const divisions = Number(readings['N']);
  const pitch = Number(readings['pitch']);
  switch (instrument) {
    case 'scale':
      return number > 0 && number < 100 ? undefined : 'is not on the bridge wire; a null point lies between 0 and 100 cm';
    case 'circular scale':
    case 'closed jaws':
      return Number.isInteger(number) && number >= 0 && number < divisions ? undefined : `is no division of this circular scale; it has whole numbers from 0 to ${divisions - 1}`;
    case 'main scale':
      return number >= 0 && isMultiple(number, pitch) ? undefined : `is no mark of the main scale; its marks are ${pitch} mm apart`;
    case 'thermometer':
      return number > -20 && number < 120 ? undefined : 'is no temperature of a water bath; give it in °C';
    case 'galvanometer':
      return undefined;
    default:
      return number > 0 ? undefined : 'is not above zero';
  }
}

const isMultiple = (value: number, of: number) => Math.abs(value / of - Math.round(value / of)) < 1e-9;
