/** Commands of TeX that are one letter or sign in text. */
const SIGNS: Record<string, string> = {
  times: ' × ', alpha: 'α', beta: 'β', delta: 'δ', Delta: 'Δ', rho: 'ρ', sigma: 'σ', theta: 'θ', pi: 'π', Omega: 'Ω', lambda: 'λ', mu: 'µ', kappa: 'κ', varepsilon: 'ε', pm: ' ± ', sum: '∑', circ: '°', prime: '′', quad: '  ', '%': '%', ',': ' ', ';': ' ',
};
const RAISED: Record<string, string> = { '-': '⁻', 0: '⁰', 1: '¹', 2: '²', 3: '³', 4: '⁴', 5: '⁵', 6: '⁶', 7: '⁷', 8: '⁸', 9: '⁹', '°': '°', '′': '′' };
const LOWERED: Record<string, string> = { 0: '₀', 1: '₁', 2: '₂', 3: '₃', 4: '₄', 5: '₅', 6: '₆', 7: '₇', 8: '₈', 9: '₉', x: 'ₓ', t: 'ₜ', p: 'ₚ', s: 'ₛ' };

/**
 * The TeX that quantities/working.ts makes as one line of text for a terminal: '\frac{P\,(W - l)}{l}' is 'P (W − l) / l'.
 * Throws at a command that it does not know.
 */
export function plainText(tex: string): string {
  const reader = { tex, at: 0 };
  return sequence(reader, '').replace(/ *= */g, ' = ').replace(/ {2,}/g, ' ').replace(/ °(?!C)/g, '°').trim();
}

interface Reader {
  tex: string;
  at: number;
}

/** Everything up to the end, which is taken too. */
function sequence(reader: Reader, end: string): string {
  let text = '';
  while (reader.at < reader.tex.length) {
    if (end !== '' && reader.tex[reader.at] === end) {
      reader.at++;
      return text;
    }
    text += part(reader);
  }
  return text;
}

function part(reader: Reader): string {
  const letter = reader.tex[reader.at++]!;
  if (letter === '{') return sequence(reader, '}');
  if (letter === '^') return scripted(part(reader), RAISED, '^');
  if (letter === '_') return scripted(part(reader), LOWERED, '_');
  if (letter === '\\') return command(reader);
  return letter === '-' ? '−' : letter;
}


function scripted(text: string, letters: Record<string, string>, otherwise: string): string {
  const all = [...text.replaceAll('−', '-')].map((letter) => letters[letter]);
  return all.includes(undefined) ? `${otherwise}${text}` : all.join('');
}

function command(reader: Reader): string {
  const name = /^([A-Za-z]+|.)/.exec(reader.tex.slice(reader.at))![0];
  reader.at += name.length;
  // A space after a name in letters only ends the name.
  if (/[A-Za-z]$/.test(name)) while (reader.tex[reader.at] === ' ') reader.at++;
  const sign = SIGNS[name];
  if (sign !== undefined) return sign;
  switch (name) {
    case 'left':
    case 'right':
      return '';
    case 'frac':
      return `${grouped(part(reader), /[+−]/, true)} / ${grouped(part(reader), /[ +−×/]/)}`;
    case 'sqrt':
      return `√${grouped(part(reader), /[ +−×/]/)}`;
    case 'overline':
      return `${part(reader)}\u0304`;
    case 'mathrm':
    case 'text':
      return part(reader);
    default:
      throw new Error(`"${reader.tex}": no plain text for \\${name}`);
  }
}

/** In brackets where it is more than one piece, and not in brackets of its own; above a line, what stands in brackets within is one. */
function grouped(text: string, loose: RegExp, isAbove = false): string {
  const inner = text.trim();
  return loose.test(isAbove ? withoutBracketed(inner) : inner) && !isBracketed(inner) ? `(${inner})` : inner;
}

function withoutBracketed(text: string): string {
  const shorter = text.replace(/\([^()]*\)/g, '');
  return shorter === text ? text : withoutBracketed(shorter);
}

/** Whether the first bracket is closed by the last. */
function isBracketed(text: string): boolean {
  if (!text.startsWith('(')) return false;
  let depth = 0;
  for (const [place, letter] of [...text].entries()) {
    if (letter === '(') depth++;
    if (letter === ')') depth--;
    if (depth === 0) return place === [...text].length - 1;
  }
  return false;
}
