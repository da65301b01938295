import { all } from './elements.ts';
import type { Opened } from './offline.ts';
import { clearAll } from './kept.ts';

const NAME = 'slidewire:look';

/** Light, dark, or as the device has it; first of all, so that the page does not change its colours while it loads. */
function startLook(): void {
  const root = document.documentElement;
  root.classList.add('js');
  const chosen = () => {
    try {
      return localStorage.getItem(NAME) ?? 'system';
    } catch {
      return 'system';
    }
  };
  const choose = (look: string) => {
    try {
      localStorage.setItem(NAME, look);
    } catch {
      // The choice then holds for this page alone.
    }
    root.dataset['look'] = look;
  };
  root.dataset['look'] = chosen();
  addEventListener('DOMContentLoaded', () => {
    for (const select of all<HTMLSelectElement>('#look')) {
      select.value = root.dataset['look']!;
      select.addEventListener('change', () => choose(select.value));
    }
    for (const button of all('[data-do="clear-all"]')) {
      button.addEventListener('click', () => {
        clearAll();
        for (const told of all('[data-told]')) told.textContent = told.dataset['told']!;
      });
    }
  });
}

/** Opened over the web, the site works without a connection after the first visit; from a folder it needs none. What is kept is fetched when the page itself is there. */
function startOffline(): void {
  const { root } = document.currentScript!.dataset;
  if (!location.protocol.startsWith('http') || !('serviceWorker' in navigator)) return;
  addEventListener('load', () => {
    const { serviceWorker } = navigator;
    serviceWorker.register(`${root}offline.js`).catch(() => {});
    const opened: Opened = { here: [location.href.split('#')[0]!, ...all<HTMLScriptElement>('script[src]').map(({ src }) => src)] };
    void serviceWorker.ready.then(({ active }) => active!.postMessage(opened));
  });
}

/** A link within a page moves to its place without changing the address, which may name a set. */
function startLinks(): void {
  addEventListener('click', (event) => {
    const link = (event.target as Element).closest('a[href^="#"]');
    const to = link && document.getElementById(link.getAttribute('href')!.slice(1));
    if (!to) return;
    event.preventDefault();
    to.tabIndex = -1;
    to.focus();
    to.scrollIntoView();
  });
}

startLook();
startLinks();
startOffline();
