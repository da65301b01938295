import type nunjucks from 'nunjucks';
import type { Order } from '../order/schema.ts';

/** What every page of a document shares. */
export interface DocumentSettings {
  order: Order;
  title: string;
  words: Record<string, unknown>;
  experiment: Record<string, unknown>;
  orientation?: 'portrait' | 'landscape';
}

/** One HTML document with the pages given, each from its template; whole in itself, fonts included. */
export function documentHtml(environment: nunjucks.Environment, { order, title, words, experiment, orientation = 'portrait' }: DocumentSettings, pages: readonly object[]): string {
  return environment.render('document.njk', {
    lang: order.language,
    title,
    words,
    experiment,
    pages,
    print: { ...order, orientation },
  });
}
