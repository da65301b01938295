import type { KeyInput, Page } from 'puppeteer-core';

/** Stops that Tab may make before a page is thought to have no such control. */
const MOST_STOPS = 250;

/** What the control that has the focus is called, as a screen reader would say it. */
export function focused(page: Page): Promise<string> {
  return page.evaluate(() => {
    const control = document.activeElement as HTMLElement & { labels?: ArrayLike<HTMLElement> };
    const around = control.labels?.[0]?.cloneNode(true) as HTMLElement | undefined;
    around?.querySelector('select')?.remove();
    const label = control.getAttribute('aria-label') ?? around?.textContent ?? control.textContent ?? '';
    return label.replace(/\s+/g, ' ').trim();
  });
}

/** Goes on by Tab alone until a control of this name has the focus. */
export async function tabTo(page: Page, name: string | RegExp): Promise<void> {
  const seen: string[] = [];
  for (let stop = 0; stop < MOST_STOPS; stop++) {
    await page.keyboard.press('Tab');
    const now = await focused(page);
    if (typeof name === 'string' ? now === name : name.test(now)) return;
    seen.push(now);
  }
  throw new Error(`Tab reaches no "${name}", but ${[...new Set(seen)].join(' | ')}`);
}

/** Goes to a control by Tab and presses a key on it. */
export async function pressOn(page: Page, name: string | RegExp, key: KeyInput): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press(key);
}

/** Goes to a field by Tab and types into it, over what stands there. */
export async function typeInto(page: Page, name: string | RegExp, text: string): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.down('Control');
  await page.keyboard.press('a');
  await page.keyboard.up('Control');
  await page.keyboard.type(text);
}

/** Chooses by the first letters of an option, in a list that Tab comes to. */
export async function chooseIn(page: Page, name: string | RegExp, option: string): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.type(option);
}
