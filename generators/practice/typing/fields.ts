import type { TypingData } from './data.ts';
import type { Said } from './says.ts';

/** What happens when something is typed. */
interface Doings {
  changed(answer: number, text: string): void;
  /** Beyond the last answer (1) or before the first (−1). */
  past(by: 1 | -1): void;
  /** To the next student or the one before. */
  turn(by: 1 | -1, answer: number): void;
  find(): void;
}

/** The fields of the answers, typed into by keyboard alone. */
export function answerFields({ columns, rules }: TypingData, doings: Doings) {
  const inputs = columns.map((_, i) => document.getElementById(`answer-${i}`) as HTMLInputElement);
  const focus = (answer: number) => {
    inputs[answer]!.focus();
    inputs[answer]!.select();
  };
  const go = (answer: number, by: 1 | -1) => (inputs[answer + by] ? focus(answer + by) : doings.past(by));
  const keys: Record<string, (answer: number) => void> = {
    Enter: (answer) => go(answer, 1),
    ArrowDown: (answer) => go(answer, 1),
    ArrowUp: (answer) => go(answer, -1),
    PageDown: (answer) => doings.turn(1, answer),
    PageUp: (answer) => doings.turn(-1, answer),
    Escape: () => doings.find(),
  };
  inputs.forEach((input, answer) => {
    input.addEventListener('input', () => doings.changed(answer, input.value));
    input.addEventListener('keydown', (event) => {
      const key = keys[event.key];
      const { unit } = columns[answer]!;
      if (key) key(answer);
      else if (event.key === ' ' && rules.units === 'typed' && unit !== '' && endsInNumber(input)) {
        putUnit(input, unit);
        doings.changed(answer, input.value);
      } else return;
      event.preventDefault();
    });
  });
  return {
    focus,
    fill: (texts: readonly string[]) => inputs.forEach((input, i) => (input.value = texts[i]!)),
    say(answer: number, { stands, note, marks }: Said): void {
      for (const [part, text] of Object.entries({ stands, note, marks })) document.getElementById(`${part}-${answer}`)!.textContent = text;
    },
  };
}

/** The unit is marked, so that another one can be typed in its place. */
function putUnit(input: HTMLInputElement, unit: string): void {
  input.value += ` ${unit}`;
  input.setSelectionRange(input.value.length - unit.length, input.value.length);
}

/** Behind a number, a raised power of ten too, a space is for the unit. */
const endsInNumber = ({ value, selectionStart }: HTMLInputElement) => /[\d⁰¹²³⁴⁵⁶⁷⁸⁹]$/.test(value) && selectionStart === value.length;
