import { loadFigureWords, loadSiteWords } from './generators/cli/content.ts';
import { gallery } from './generators/figures/gallery.ts';
import { templates } from './generators/press/templates.ts';

/** The page of all figures. Runs under tsx, so that it may import TypeScript. The student's site is built by generators/cli/site/. */
export default function (config) {
  // Installed as a package, the templates lie below node_modules, which is ignored by default.
  config.ignores.delete('**/node_modules/**');
  config.setUseGitIgnore(false);
  config.setLibrary('njk', templates());
  config.addGlobalData('words', loadSiteWords('en'));
  config.addGlobalData('exhibits', gallery(loadFigureWords('en')));
  return { dir: { input: 'templates/gallery', output: 'build/site' }, htmlTemplateEngine: 'njk' };
}
