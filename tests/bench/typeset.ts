import type nunjucks from 'nunjucks';
import { type MakePage, type Kind, sheetPages } from '../../generators/cli/sheet-pages.ts';
import { documentHtml } from '../../generators/press/documents.ts';
import { templates } from '../../generators/press/templates.ts';
import type { Line } from '../../generators/quantities/working.ts';
import type { PackWork } from '../../generators/cli/pack-files.ts';

const KINDS: readonly Kind[] = ['worksheet', 'key', 'solution'];
const SHEETS_A_PART = 25;

/** How a typesetter writes what the templates hold. Drawings are left out. */
export interface Dialect {
  text(plain: string): string;
  formula(tex: string): string;
  table(rows: string[][], caption: string): string;
  /** Before and after what an element holds, by its name; others leave nothing. */
  around: Record<string, readonly [before: string, after: string]>;
}

/** The sheets of a pack, so many of a kind in one part, as the bodies of a typesetter's documents. */
export function typesetParts({ order, tables, issues, words }: Omit<PackWork, 'press' | 'partial'>, dialect: Dialect, size = SHEETS_A_PART): string[] {
  const pageOf: MakePage = sheetPages(order, tables, words);
  const environment = withTex();
  const settings = { order, words: words.sheet, experiment: words.experiment, title: words.experiment.title };
  return KINDS.flatMap((kind) =>
    Array.from({ length: Math.ceil(issues.length / size) }, (_, part) => {
      const pages = issues.slice(part * size, (part + 1) * size).map((issue, i) => pageOf(kind, issue, i));
      return body(/<main>([^]*)<\/main>/.exec(documentHtml(environment, settings, pages))![1]!, dialect);
    }),
  );
}

/** The press's own templates, with every formula as its TeX between marks. */
function withTex(): nunjucks.Environment {
  const environment = templates();
  const marked = (line: Line) => (line.tex === '' ? '' : `\u0001${line.tex}\u0002`);
  for (const filter of ['math', 'display']) environment.addFilter(filter, marked);
  environment.addFilter('prose', (sentence: string, blanks: Record<string, Line | string | { unit: Line }>) =>
    sentence.replace(/\{(\w+)\}/g, (_, name: string) => {
      const filling = blanks[name]!;
      return typeof filling === 'string' ? filling : marked('unit' in filling ? filling.unit : filling);
    }));
  return environment;
}

function body(html: string, dialect: Dialect): string {
  const bare = html.replace(/<svg[^]*?<\/svg>/g, '');
  return bare
    .split(/(<table[^]*?<\/table>)/)
    .map((piece) => (piece.startsWith('<table') ? table(piece, dialect) : inline(piece, dialect)))
    .join('');
}

function table(html: string, dialect: Dialect): string {
  const caption = inline(/<caption>([^]*?)<\/caption>/.exec(html)?.[1] ?? '', dialect);
  const rows = [...html.matchAll(/<tr>([^]*?)<\/tr>/g)].map(([, row]) => [...row!.matchAll(/<t[hd][^>]*>([^]*?)<\/t[hd]>/g)].map(([, cell]) => inline(cell!, dialect)));
  return dialect.table(rows, caption);
}

function inline(html: string, dialect: Dialect): string {
  return html.replace(/<(\/?)([a-z]\w*)[^>]*>|\u0001([^\u0002]*)\u0002|([^<\u0001]+)/g, (_, end?: string, tag?: string, tex?: string, text?: string) => {
    if (tag !== undefined) return dialect.around[tag]?.[end ? 1 : 0] ?? '';
    return tex === undefined ? dialect.text(entities(text!)) : dialect.formula(entities(tex));
  });
}

const NAMED: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', ensp: '\u2002' };
const entities = (text: string) => text.replace(/&(?:#(\d+)|(\w+));/g, (whole, code?: string, name?: string) => (code ? String.fromCodePoint(Number(code)) : NAMED[name!] ?? whole));
