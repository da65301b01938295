import { type SetCode, readSetCode, setCode } from '../set-code.ts';
import type { PracticeWords } from './data.ts';
import { all, onPress } from './elements.ts';
import { namedIn } from './named-in.ts';
import { type Notebook, clearSet } from './notebook.ts';
import { showMarks } from './said.ts';

/** A sheet's code: two fours of letters and figures, with letters too that someone takes for the figures in it. */
const SHEET_CODE = /^(?!set[-‐‑–— ]?\d+$)[0-9A-Z]{4}[-‐‑–— ]?[0-9A-Z]{4}$/i;

type OnPage = Notebook & { printed: { code: SetCode } };

/** The buttons above a set: another one, one by its code, a link to share, clear, print, and the plain view. `address` is what the page's address has of a set. */
export function setTools(current: () => OnPage, words: PracticeWords, cleared: () => void, address: (code: SetCode) => string = (code) => code): void {
  const tell = (text: string) => all('[data-told]').forEach((told) => (told.textContent = text));
  onPress('fresh', () => {
    location.hash = address(setCode(Math.floor(Math.random() * 1_000_000)));
    tell('');
  });
  const typed = document.querySelector<HTMLInputElement>('#set-code')!;
  const openTyped = () => {
    const code = readSetCode(typed.value);
    if (code) location.hash = address(code);
    tell(code ? '' : noCode(typed.value, words));
  };
  onPress('open-code', openTyped);
  typed.addEventListener('keydown', ({ key }) => key === 'Enter' && openTyped());
  const tellStray = () => {
    const named = namedIn(location.hash);
    if (named !== '' && !readSetCode(named) && !document.getElementById(named)) tell(noCode(named, words));
  };
  addEventListener('hashchange', tellStray);
  tellStray();
  onPress('share', () => void share(address(current().printed.code)).then(() => tell(words.shared), (link: string) => tell(link)));
  onPress('clear', () => {
    clearSet(current());
    for (const said of all('[data-said]')) said.replaceChildren();
    showMarks(current(), words);
    cleared();
    tell(words.cleared);
  });
  onPress('print', () => print());
  onPress('plain', (button) => {
    const plain = document.documentElement.classList.toggle('plain');
    button.textContent = plain ? words.full : words.plain;
  });
  addEventListener('beforeprint', () => all<HTMLDetailsElement>('details.key').forEach((details) => (details.open = true)));
}

/** What is said of a text that is no set code. */
const noCode = (text: string, words: PracticeWords): string => (SHEET_CODE.test(text.trim()) ? words.aSheetCode : words.notACode);

/** Copies the address of a set; where copying is not allowed, gives it to be shown. */
async function share(set: string): Promise<void> {
  const link = `${location.href.split('#')[0]}#${set}`;
  try {
    await navigator.clipboard.writeText(link);
  } catch {
    throw link;
  }
}
