import type { PracticeWords } from './data.ts';
import { make } from './elements.ts';

/** The inputs of one place. */
export interface Field {
  /** What stands in the inputs, as one number: '4.9e-7' from its two fields. */
  text(): string;
  write(text: string): void;
  inputs: HTMLInputElement[];
}

interface Manner {
  id: string;
  label: string;
  /** May be negative: a sign that a number pad lacks. */
  signed: boolean;
  /** Mantissa and power of ten apart, since a number pad has no × 10. */
  scientific: boolean;
}

/** Puts the inputs of a place into its holder. */
export function makeField(holder: HTMLElement, { id, label, signed, scientific }: Manner, words: PracticeWords): Field {
  const input = make('input', { id, type: 'text', inputmode: 'decimal', autocomplete: 'off', size: '7', 'aria-label': label, 'aria-describedby': `${id}-mark` });
  const sign = signed ? signButton(`${label}, ${words.minus}`) : undefined;
  if (!scientific) {
    holder.replaceChildren(...(sign ? [sign.button] : []), input);
    return { text: () => withSign(sign, input.value), write: (text) => writeSigned(sign, input, text), inputs: [input] };
  }
  const tensLabel = `${label}, ${words.tens}`;
  const tens = make('input', { id: `${id}-tens`, type: 'text', inputmode: 'numeric', autocomplete: 'off', size: '3', 'aria-label': tensLabel });
  const tensSign = signButton(`${tensLabel}, ${words.minus}`);
  holder.replaceChildren(...(sign ? [sign.button] : []), input, make('span', { class: 'times' }, '× 10'), make('span', { class: 'raised' }, tensSign.button, tens));
  return {
    text() {
      const power = withSign(tensSign, tens.value);
      const mantissa = withSign(sign, input.value);
      return mantissa === '' || power === '' ? mantissa : `${mantissa}e${power}`;
    },
    write(text) {
      const [, mantissa = text, power = ''] = /^(.*)e([-−]?\d*)$/.exec(text) ?? [];
      writeSigned(sign, input, mantissa);
      writeSigned(tensSign, tens, power);
    },
    inputs: [input, tens],
  };
}

interface Sign {
  button: HTMLButtonElement;
}

function signButton(label: string): Sign {
  const button = make('button', { type: 'button', class: 'sign', 'aria-pressed': 'false', 'aria-label': label }, '−');
  button.addEventListener('click', () => {
    press(button, button.getAttribute('aria-pressed') !== 'true');
    button.dispatchEvent(new Event('change', { bubbles: true }));
  });
  return { button };
}

const press = (button: HTMLButtonElement, pressed: boolean) => button.setAttribute('aria-pressed', String(pressed));

/** A minus that is typed counts as well as one that is pressed. */
function withSign(sign: Sign | undefined, typed: string): string {
  const text = typed.trim();
  return text !== '' && sign?.button.getAttribute('aria-pressed') === 'true' && !/^[-−]/.test(text) ? `-${text}` : text;
}

function writeSigned(sign: Sign | undefined, input: HTMLInputElement, text: string): void {
  const negative = sign !== undefined && /^[-−]/.test(text);
  if (sign) press(sign.button, negative);
  input.value = negative ? text.slice(1) : text;
}
