import { type ReadyFormula, provideFormulas } from '../formula.ts';
import { startTyping } from './page.ts';

/** Stands before this script in the page. */
declare const formulas: Readonly<Record<string, ReadyFormula>>;

provideFormulas(formulas);
startTyping(JSON.parse(document.getElementById('sheets')!.textContent!));
