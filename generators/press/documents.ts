import type nunjucks from 'nunjucks';
import type { Order } from '../order/schema.ts';
import { isShort } from '../order/sections.ts';
import { withDecimalCommas } from './decimal-sign.ts';
import { facesFor } from './fonts.ts';

/** What every page of a document shares. */
export interface DocumentSettings {
  /** How it is printed; for a sheet, all that the order says. */
  order: Pick<Order, 'language' | 'paper' | 'size' | 'sections'> & Partial<Order>;
  title: string;
  words: Record<string, unknown>;
  experiment: Record<string, unknown>;
  orientation?: 'portrait' | 'landscape';
}

/** One HTML document with the pages given, each from its template; whole in itself, fonts included. */
export function documentHtml(environment: nunjucks.Environment, { order, title, words, experiment, orientation = 'portrait' }: DocumentSettings, pages: readonly object[]): string {
  const settings = { lang: order.language, title, words, experiment, pages, print: { ...order, orientation, short: isShort(order.sections) && pages.every(isWorksheet) } };
  const body = bodyHtml(environment, 'body.njk', settings, order.decimal);
  const faces = facesFor(shownText(body));
  const typefaces = ['STIX Two Text', ...faces.map(({ family }) => family), 'STIX Two Math'].map((family) => `'${family}'`).join(', ');
  return environment.render('document.njk', { ...settings, body, faces, typefaces: `${typefaces}, serif` });
}

/** Pages laid out by a template, numbers with the decimal sign that is asked for. */
export function bodyHtml(environment: nunjucks.Environment, template: string, { pages, print, ...settings }: { pages: readonly object[]; print: object }, decimal: Order['decimal'] = 'point'): string {
  const laid = ([head, ...sheets]: readonly object[]) => environment.render(template, { ...settings, print: head, pages: sheets });
  return decimal === 'comma' ? withDecimalCommas([print, ...pages], laid) : laid([print, ...pages]);
}

/** A key has more to say than fits the one page of a short worksheet. */
const isWorksheet = (page: object) => 'template' in page && ['worksheet', 'blank'].includes(String(page.template));

/** What is seen of a page: no tags; its formulas have a typeface of their own. */
function shownText(html: string): string {
  return html.replace(/<math[^]*?<\/math>|<span class="math"[^>]*>[^<]*|<[^>]*>/g, '');
}
