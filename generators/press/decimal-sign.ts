/** A number with decimals that is no part of a word, of a date or of a clause's number. */
const DECIMAL = /(?<![A-Za-z\d.])(\d+)\.(\d+)(?!\.?\d)/g;

/** Numbers of a list, of which commas part what points leave whole. */
const LIST = /(?<![\d.])[−-]?\d+(?:\.\d+)?(?:, [−-]?\d+(?:\.\d+)?)+(?![\d.]*\d)/g;

/** Text or an attribute to be read or heard, between what is neither: styles and the rest of the tags. */
const WORDS = /<style[^]*?<\/style>|<[^>]*>|[^<]+/g;
const HEARD = /(\s(?:aria-label|alt|title)=")([^"]*)"/g;

/** Stands for a point that is no decimal sign (a private-use character, so that no text has it). */
const KEPT = '\ue000';

/** What is a name and no number, wherever it stands in a page. */
const NAMES = new Set(['roll', 'name', 'code', 'title']);

/** Makes HTML from pages with a decimal comma in every number that is seen or heard, and semicolons in lists of such numbers; rolls, names, codes and titles stay. */
export function withDecimalCommas<Page>(pages: readonly Page[], html: (pages: readonly Page[]) => string): string {
  return commas(html(kept(pages))).replaceAll(KEPT, '.');
}

function commas(html: string): string {
  return html.replace(WORDS, (part) => {
    if (part.startsWith('<style')) return part;
    return part.startsWith('<') ? part.replace(HEARD, (_, before: string, text: string) => `${before}${inText(text)}"`) : inText(part);
  });
}

function inText(text: string): string {
  return text.replace(LIST, (list) => (list.includes('.') ? list.replaceAll(', ', '; ') : list)).replace(DECIMAL, '$1,$2');
}

function kept<Value>(value: Value, key = ''): Value {
  if (typeof value === 'string') return (NAMES.has(key) ? value.replaceAll('.', KEPT) : value) as Value;
  if (Array.isArray(value)) return value.map((each) => kept(each, key)) as Value;
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, kept(each, name)])) as Value;
}
