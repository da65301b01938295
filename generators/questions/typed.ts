import type { Written } from '../quantities/step.ts';
import { unit, unitTyped } from '../quantities/unit.ts';
import { shift } from '../quantities/written.ts';

const NUMBER = /^([-+−]?)(\d+\.?\d*|\.\d+)(?:e([-+]?\d+))?/i;
/** No number of a school's question is longer. */
const LONGEST = 20;
/** Nor is one larger or smaller than ten to this power. */
const FARTHEST = 30;

/**
 * A number as a setter types it, in the unit of its quantity: '12.5', '12.5 Ω', '4.9e-7', and '1.2 kΩ' as '1200' where
 * that is Ω. Its figures stay as they were typed. Nothing for what is no number, or has the unit of another quantity.
 */
export function numberTyped(text: string, name: string): Written | undefined {
  const [all, sign = '', digits = '', power = '0'] = NUMBER.exec(text.trim()) ?? [];
  if (all === undefined || all.length > LONGEST) return undefined;
  const tens = tensFrom(text.trim().slice(all.length).trim(), name);
  if (tens === undefined || Math.abs(Number(power)) > FARTHEST) return undefined;
  const whole = digits.startsWith('.') ? `0${digits}` : digits.replace(/\.$/, '');
  return shift(`${sign === '' || sign === '+' ? '' : '-'}${whole}${Number(power) === 0 ? '' : `e${Number(power)}`}`, tens);
}

/** How many tens lie between the unit that was typed and the quantity's own; nothing where it is that of another quantity. */
function tensFrom(typed: string, name: string): number | undefined {
  if (typed === '' || typed === name) return 0;
  const other = unitTyped(typed);
  const own = unit(name);
  return other === undefined || other.coherent !== own.coherent ? undefined : other.tens - own.tens;
}
