/**
 * The small part of TeX that the formulas of sheets are written in, as MathML: the same marks as KaTeX's, which is
 * too large for a page. A test holds the two against each other. What is not known stands as it is written.
 */
export function mathmlOf(tex: string): string {
  const row = rowOf(tokens(tex));
  // A formula that is one group needs no second row about it.
  const inside = row.length === 1 ? row[0]!.replace(/^<mrow>(.*)<\/mrow>$/s, '$1') : joined(row);
  return `<math xmlns="http://www.w3.org/1998/Math/MathML">${inside}</math>`;
}

/** Upright texts beside each other are one; a minus after an equals sign belongs to what follows. */
const joined = (pieces: readonly string[]) =>
  pieces.join('').replaceAll('</mtext><mtext>', '').replaceAll('<mo>=</mo><mo>−</mo>', '<mo>=</mo><mo form="prefix">−</mo>');

/** The tokens that are left; readers take from its front. */
type Tokens = string[];

function tokens(tex: string): Tokens {
  return tex.match(/\\(?:text|mathrm)\{[^{}]*\}|\\[A-Za-z]+ ?|\\.|\d+(?:\.\d+)?|[^\s]/g)?.map((token) => token.trimEnd()) ?? [];
}

const SIGNS: Readonly<Record<string, string>> = {
  '-': '<mo>−</mo>',
  ',': '<mo separator="true">,</mo>',
  '(': '<mo stretchy="false">(</mo>',
  ')': '<mo stretchy="false">)</mo>',
  '\\times': '<mo>×</mo>',
  '\\pm': '<mo>±</mo>',
  '\\sum': '<mo>∑</mo>',
  '\\,': '<mtext>\u2009</mtext>',
  '\\;': '<mtext>\u2005\u200a</mtext>',
  '\\%': '<mtext>%</mtext>',
  '\\Omega': '<mtext>Ω</mtext>',
  '\\Delta': '<mtext>Δ</mtext>',
  '/': '<mtext>/</mtext>',
  '\\circ': '<mo lspace="0em" rspace="0em">∘</mo>',
};

const GREEK = { alpha: 'α', beta: 'β', gamma: 'γ', delta: 'δ', kappa: 'κ', lambda: 'λ', mu: 'μ', pi: 'π', rho: 'ρ', sigma: 'σ', tau: 'τ', theta: 'θ' };

/** Pieces up to a closing brace or \right, which is taken too. */
function rowOf(left: Tokens): string[] {
  const row: string[] = [];
  while (left.length > 0) {
    const token = left.shift()!;
    if (token === '}' || token === '\\right') break;
    if (token === '_' || token === '^') row.push(script(row.pop() ?? '<mrow></mrow>', token, left));
    else row.push(pieceOf(token, left));
  }
  return row;
}

function script(base: string, sign: string, left: Tokens): string {
  const index = argument(left);
  const [first] = left;
  if (first !== '_' && first !== '^') return sign === '_' ? `<msub>${base}${index}</msub>` : `<msup>${base}${index}</msup>`;
  left.shift();
  const other = argument(left);
  return `<msubsup>${base}${sign === '_' ? index + other : other + index}</msubsup>`;
}

/** One piece, or what stands in braces as one. */
function argument(left: Tokens): string {
  return pieceOf(left.shift() ?? '{', left);
}

/** Several pieces in one row; one alone needs none. */
function grouped(row: string[]): string {
  const inside = joined(row);
  return row.length === 1 || isOne(inside) ? inside : `<mrow>${inside}</mrow>`;
}

/** Whether a row has become a single text by joining. */
const isOne = (inside: string) => /^<(m[a-z]+)[^>]*>[^<]*<\/\1>$/.test(inside);

function pieceOf(token: string, left: Tokens): string {
  const sign = SIGNS[token];
  if (sign !== undefined) return sign;
  if (/^\d/.test(token)) return `<mn>${token}</mn>`;
  if (/^[A-Za-z]$/.test(token)) return `<mi>${token}</mi>`;
  const [, upright] = /^\\mathrm\{(.*)\}$/.exec(token) ?? [];
  if (upright !== undefined) return grouped(uprightPieces(upright));
  const [, words] = /^\\text\{(.*)\}$/.exec(token) ?? [];
  if (words !== undefined) return `<mtext>${words.replaceAll(' ', '\u00a0')}</mtext>`;
  switch (token) {
    case '{':
      return grouped(rowOf(left));
    case '\\frac':
      return `<mfrac>${argument(left)}${argument(left)}</mfrac>`;
    case '\\sqrt':
      return `<msqrt>${argument(left)}</msqrt>`;
    case '\\overline':
      return `<mover accent="true">${argument(left)}<mo stretchy="true">‾</mo></mover>`;
    case '\\left':
      return bracketed(left);
  }
  const letter = GREEK[token.slice(1) as keyof typeof GREEK];
  return letter ? `<mi>${letter}</mi>` : `<mo>${token}</mo>`;
}

const uprightPieces = (text: string) => text.split(/(,)/).filter((part) => part !== '').map((part) => (part === ',' ? SIGNS[',']! : /^\d+$/.test(part) ? `<mn>${part}</mn>` : `<mtext>${part}</mtext>`));

function bracketed(left: Tokens): string {
  const open = left.shift()!;
  const inside = joined(rowOf(left));
  const close = left.shift()!;
  return `<mrow><mo fence="true">${open}</mo>${inside}<mo fence="true">${close}</mo></mrow>`;
}
