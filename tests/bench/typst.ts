import type { PackWork } from '../../generators/cli/pack-files.ts';
import { type Dialect, typesetParts } from './typeset.ts';

/** Not a dependency: `npm install --no-save` it for this comparison. */
const COMPILER = '@myriaddreamin/typst-ts-node-compiler';

const WORDS: Record<string, string> = {
  times: 'times', pi: 'pi', rho: 'rho', Delta: 'Delta', Omega: 'Omega', alpha: 'alpha', delta: 'delta', circ: 'degree', pm: 'plus.minus',
  cdot: 'dot', sum: 'sum', sigma: 'sigma', beta: 'beta', '!': '', ',': 'thin', ';': 'space', ' ': 'space', '%': '\\%', left: '', right: '', '\\': '\\ ',
};

/** The TeX of a sheet's formulas in Typst's words. */
function math(tex: string): string {
  let at = 0;
  const one = (): string => {
    const [token] = /^(\\[a-zA-Z]+|\\[^]|\d+(?:\.\d+)?|[^])/.exec(tex.slice(at))!;
    at += token.length;
    if (token === '{') return many();
    if (!token.startsWith('\\')) return token === '"' ? '\\"' : token === '/' ? '\\/' : token;
    const name = token.slice(1);
    if (name === 'frac') return `(${one()})/(${one()})`;
    if (name === 'sqrt') return `sqrt(${one()})`;
    if (name === 'overline' || name === 'bar') return `overline(${one()})`;
    if (name === 'mathrm' || name === 'text' || name === 'begin' || name === 'end') return word(name);
    const known = WORDS[name];
    if (known === undefined) throw new Error(`no Typst for ${token} in ${tex}`);
    return known;
  };
  const word = (name: string): string => {
    const close = tex.indexOf('}', at);
    const text = tex.slice(at + 1, close);
    at = close + 1;
    return name === 'begin' || name === 'end' ? '' : `upright("${text}")`;
  };
  const many = (): string => {
    const parts: string[] = [];
    while (at < tex.length && tex[at] !== '}') parts.push(/[_^]/.test(tex[at]!) ? script() : one());
    at++;
    return parts.filter((part) => part !== '').join(' ') || '""';
  };
  const script = (): string => `${tex[at++]}(${one()})`;
  // Typst wants something before an exponent.
  return many().replace(/(^|[( ])(?=[_^]\()/g, '$1"" ').replace(/ (?=[_^]\()/g, '');
}

const typst: Dialect = {
  text: (plain) => plain.replace(/[\\*_`$#@<>=\-+/~"'[\]]/g, '\\$&').replace(/\s*\n\s*/g, ' '),
  formula: (tex) => `#box[$${math(tex)}$]`,
  table: (rows, caption) => `\n\n#emph[${caption}]\n#table(columns: ${Math.max(...rows.map((row) => row.length))}, ${rows.flat().map((cell) => `[${cell}]`).join(', ')})\n\n`,
  around: {
    section: ['\n\n', '\n\n'],
    h1: ['\n#pagebreak(weak: true)\n#heading[', ']\n'],
    h2: ['\n\n#heading(level: 2)[', ']\n'],
    p: ['\n\n', '\n\n'],
    div: ['\n\n', '\n\n'],
    dt: ['\n\n#emph[', '] '],
    dd: ['', '\n\n'],
    li: ['\n#list(indent: 0pt)[', ']\n'],
  },
};

interface Compiler {
  pdf(document: { mainFileContent: string }): Uint8Array;
}

/** Typesets the same sheets by Typst, a part after the other, when it is called; nothing where no compiler is installed. */
export async function typstPress(work: Omit<PackWork, 'press' | 'partial'>): Promise<(() => void) | undefined> {
  const found = await import(COMPILER).then((module) => module as { NodeCompiler: { create(): Compiler } }, () => undefined);
  if (!found) return undefined;
  const parts = typesetParts(work, typst).map((body) => `#set page(paper: "a4", margin: 17mm, numbering: "1")\n#set text(size: 10pt)\n${body}`);
  // A compiler of its own for each part, which has no memory of the others.
  return () => parts.forEach((mainFileContent) => found.NodeCompiler.create().pdf({ mainFileContent }));
}
