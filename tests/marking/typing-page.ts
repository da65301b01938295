import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, KeyInput, Page } from 'puppeteer-core';
import type { Column } from '../../generators/marking/columns.ts';
import type { Issue } from '../../generators/sheets/issue.ts';

/** What stands beside one answer, and below all. */
export interface Shown {
  answers: { stands: string; note: string; marks: string }[];
  total: string;
}

/** A page for typing answers in a browser, and what goes on in it. */
export interface TypingPage {
  page: Page;
  /** Addresses asked for, and errors. */
  asked: string[];
  shown(): Promise<Shown>;
  /** Puts texts into the fields of a sheet, as if they were pasted. */
  paste(place: number, texts: readonly string[]): Promise<void>;
  choose(place: number): Promise<void>;
  press(...keys: string[]): Promise<void>;
  type(text: string): Promise<void>;
  textOf(id: string): Promise<string>;
  /** Saves by the keyboard; the file. */
  save(): Promise<Buffer>;
}

export async function openTyping(browser: Browser, folder: string): Promise<TypingPage> {
  const page = await browser.newPage();
  const asked: string[] = [];
  page.on('request', (request) => void (request.url().startsWith('blob:') || asked.push(request.url())));
  page.on('pageerror', (error) => asked.push(String(error)));
  page.on('console', (message) => asked.push(message.text()));
  const client = await browser.target().createCDPSession();
  const down = join(folder, 'down');
  await client.send('Browser.setDownloadBehavior', { behavior: 'allowAndName', downloadPath: down, eventsEnabled: true });
  await page.goto(`file://${join(folder, 'typing.html')}`);
  const textOf = (id: string) => page.$eval(`#${id}`, (element) => element.textContent);
  return {
    page,
    asked,
    textOf,
    shown: () => page.evaluate(shownNow) as Promise<Shown>,
    paste: (place, texts) => page.evaluate(`(${String(pasted)})(${place}, ${JSON.stringify(texts)})`) as Promise<void>,
    choose: (place) => page.evaluate(`(${String(chosen)})(${place})`) as Promise<void>,
    press: async (...keys) => {
      for (const key of keys) await page.keyboard.press(key as KeyInput);
    },
    type: (text) => page.keyboard.type(text),
    async save() {
      const done = new Promise<string>((resolve) => client.on('Browser.downloadProgress', ({ state, guid }) => state === 'completed' && resolve(guid)));
      await page.keyboard.down('Control');
      await page.keyboard.press('s');
      await page.keyboard.up('Control');
      return readFileSync(join(down, await done));
    },
  };
}

const shownNow = `({
  answers: Array.from(document.querySelectorAll('tbody tr'), (row) => Object.fromEntries(['stands', 'note', 'marks'].map((part) => [part, row.querySelector('[id^=' + part + ']').textContent]))),
  total: document.getElementById('total').textContent,
})`;

// These run in the page.
function chosen(place: number): void {
  const select = document.getElementById('student') as HTMLSelectElement;
  select.value = String(place);
  select.dispatchEvent(new Event('change'));
}

function pasted(place: number, texts: readonly string[]): void {
  const select = document.getElementById('student') as HTMLSelectElement;
  select.value = String(place);
  select.dispatchEvent(new Event('change'));
  texts.forEach((text, i) => {
    const input = document.getElementById(`answer-${i}`) as HTMLInputElement;
    input.value = text;
    input.dispatchEvent(new Event('input'));
  });
}

/** A name for an answer of a sheet, in what a test says. */
export const nameOf = (issue: Issue, { id, row }: Column) => `${issue.code} ${id} ${row + 1}`;
