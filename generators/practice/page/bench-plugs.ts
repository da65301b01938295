import type { BoxName } from '../../experiments/on-bench.ts';
import { all } from './elements.ts';

/** Plugs of the drawn boxes, each taken out and put in by a press; `turned` is told of every one. */
export function plugs(root: HTMLElement, out: Record<BoxName, Set<number>>, turned: () => void): void {
  for (const box of all('[data-box]', root)) {
    const places = out[box.dataset['box'] as BoxName];
    all('.plug', box).forEach((plug, place) =>
      plug.addEventListener('click', () => {
        if (!places.delete(place)) places.add(place);
        showPlugs(root, out);
        turned();
      }),
    );
  }
}

/** Shows which plugs are out. */
export function showPlugs(root: HTMLElement, out: Record<BoxName, ReadonlySet<number>>): void {
  for (const box of all('[data-box]', root)) all('.plug', box).forEach((plug, place) => plug.setAttribute('aria-pressed', String(out[box.dataset['box'] as BoxName].has(place))));
}
