/** What is kept on the device begins with this. */
const PREFIX = 'slidewire:';

/** What a student wrote in a set, by place. */
export type Texts = Record<string, string>;

/** Reads what is kept under a name; nothing where the browser keeps nothing, as for a file in some of them. */
export function kept(name: string): Texts {
  try {
    const value: unknown = JSON.parse(localStorage.getItem(PREFIX + name) ?? '{}');
    return typeof value === 'object' && value !== null ? Object.fromEntries(Object.entries(value).filter((entry): entry is [string, string] => typeof entry[1] === 'string')) : {};
  } catch {
    return {};
  }
}

export function keep(name: string, texts: Texts): void {
  try {
    if (Object.values(texts).every((text) => text === '')) localStorage.removeItem(PREFIX + name);
    else localStorage.setItem(PREFIX + name, JSON.stringify(texts));
  } catch {
    // Where nothing can be kept, the page works as long as it is open.
  }
}

/** Keeps one more text under a name, beside what another window has kept there meanwhile. */
export const keepOne = (name: string, key: string, text: string): void => keep(name, { ...kept(name), [key]: text });

/** Clears everything that these pages keep. */
export function clearAll(): void {
  try {
    for (const name of Object.keys(localStorage)) if (name.startsWith(PREFIX)) localStorage.removeItem(name);
  } catch {
    // There is nothing to clear where nothing can be kept.
  }
}
