import type { PackWork } from '../../generators/cli/pack-files.ts';
import { type Dialect, typesetParts } from './typeset.ts';

const HEAD = String.raw`\documentclass[a4paper,10pt]{article}
\usepackage{amsmath}\usepackage[margin=17mm]{geometry}
\DeclareUnicodeCharacter{2002}{\enspace}\DeclareUnicodeCharacter{221E}{$\infty$}\DeclareUnicodeCharacter{03C1}{$\rho$}
\DeclareUnicodeCharacter{0394}{$\Delta$}\DeclareUnicodeCharacter{2212}{$-$}\DeclareUnicodeCharacter{03A9}{$\Omega$}
\begin{document}
`;

const latex: Dialect = {
  text: (plain) => plain.replace(/[\\{}$&#_%~^]/g, (c) => (/[\\~^]/.test(c) ? `\\char${c.charCodeAt(0)} ` : `\\${c}`)),
  formula: (tex) => `$${tex}$`,
  table: (rows, caption) => `\n\n\\textit{${caption}}\n\n\\noindent\\begin{tabular}{|${'c|'.repeat(Math.max(...rows.map((row) => row.length)))}}\\hline\n${rows.map((row) => `${row.join(' & ')}\\\\\\hline`).join('\n')}\n\\end{tabular}\n\n`,
  around: {
    section: ['\n\n', '\n\n'],
    h1: ['\\clearpage\\section*{', '}\n'],
    h2: ['\n\n\\subsection*{', '}\n'],
    p: ['\n\n', '\n\n'],
    div: ['\n\n', '\n\n'],
    dt: ['\\textit{', '} '],
    dd: ['', '\\dotfill\n\n'],
    ul: ['\\begin{itemize}', '\\end{itemize}'],
    ol: ['\\begin{enumerate}', '\\end{enumerate}'],
    li: ['\\item ', '\n'],
  },
};

/** The same sheets for pdflatex: texts, tables and formulas; the drawings are left out, and nothing is tagged. */
export function latexParts(work: Omit<PackWork, 'press' | 'partial'>, size?: number): string[] {
  return typesetParts(work, latex, size).map((body) => `${HEAD}${body}\\end{document}\n`);
}
