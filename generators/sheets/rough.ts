import { scale } from '../quantities/evaluate.ts';
import { type SpokenWords, fill, spokenNumber } from '../quantities/spoken.ts';
import { type Line, quantityLine } from '../quantities/working.ts';
import { unit } from '../quantities/unit.ts';
import { decimalsOf, parts, round, shift } from '../quantities/written.ts';

/** A number for the teacher's eye alone, to so many figures: a true value, an uncertainty. */
export function roughly(value: number, unitName: string, words: SpokenWords, figures = 4): Line {
  return quantityLine(round(value, { figures }, 'even'), unitName, words);
}

/**
 * A value with its uncertainty, '(4.16 ± 0.19) × 10⁻⁷ Ω m': two significant figures in the uncertainty, the value to
 * the same place (JCGM 100:2008, 7.2.6).
 */
export function withUncertainty(value: number, uncertainty: number, unitName: string, words: SpokenWords): Line {
  const [, tens] = parts(round(value, { figures: 3 }, 'even'));
  const off = shift(round(uncertainty, { figures: 2 }, 'even'), -tens);
  const [mantissa, rest] = parts(off);
  const digits = { decimals: rest === 0 ? decimalsOf(mantissa) : decimalsOf(mantissa) - rest };
  const middle = round(scale(value, -tens), digits, 'even');
  const plain = round(scale(uncertainty, -tens), digits, 'even');
  const bracketed: Line = {
    // Braces, so that the sign stands close before a negative number.
    tex: `\\left(${middle.startsWith('-') ? `{${middle}}` : middle} \\pm ${plain}\\right)`,
    spoken: fill(words.bracket, { of: fill(words.plusMinus, { left: middle, right: plain }) }),
  };
  const { tex } = unit(unitName);
  const scaled = tens === 0 ? bracketed : { tex: `${bracketed.tex} \\times 10^{${tens}}`, spoken: fill(words.tens, { of: bracketed.spoken, exponent: spokenNumber(String(tens), words) }) };
  return { tex: `${scaled.tex}${tex && `\\;${tex}`}`, spoken: `${scaled.spoken} ${words.units[unitName] ?? unitName}`.trim() };
}
