/** The elements of the page that a selector names. */
export function all<E extends HTMLElement = HTMLElement>(selector: string, within: ParentNode = document): E[] {
  return Array.from(within.querySelectorAll<E>(selector));
}

/** A new element with its attributes and what stands in it; text is text. */
export function make<K extends keyof HTMLElementTagNameMap>(tag: K, attributes: Readonly<Record<string, string>> = {}, ...inside: (Node | string)[]): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...inside);
  return element;
}

/** What a button of the page, by its `data-do`, does. */
export function onPress(name: string, action: (button: HTMLElement) => void): void {
  for (const button of all(`[data-do="${name}"]`)) button.addEventListener('click', () => action(button));
}
