import nunjucks from 'nunjucks';
import { formulaHtml } from '../../practice/fillings.ts';
import { type Blanks, prose } from '../../practice/prose.ts';
import { templates } from '../../press/templates.ts';
import type { Line } from '../../quantities/working.ts';

export { prose };

/** The templates' environment for the site: formulas are plain MathML, which screen readers can walk. */
export function siteTemplates(): nunjucks.Environment {
  const environment = templates();
  const safe = (html: string) => new nunjucks.runtime.SafeString(html);
  environment.addFilter('math', (line: Line) => safe(formulaHtml(line)));
  environment.addFilter('prose', (sentence: string, blanks: Blanks) => safe(prose(sentence, blanks)));
  return environment;
}
