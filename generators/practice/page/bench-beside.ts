import { endAt, windowFrom } from '../../figures/bench/tapes.ts';
import { fill } from '../../quantities/spoken.ts';
import { bathPicture } from './bench-picture.ts';
import type { Stand } from './bench-stand.ts';
import { all } from './elements.ts';
import { lookAt } from './tapes.ts';

/** The clips on the wire and the bath of the coil: each is set by a slider, and then read on its instrument. */
export function beside(stand: Stand): { offer(): void; show(): void } {
  const { root, setting } = stand;
  const sliders = all<HTMLInputElement>('[data-beside]', root);
  for (const slider of sliders) {
    slider.addEventListener('input', () => {
      setting[slider.dataset['beside'] as 'length' | 'celsius'] = Number(slider.value);
      stand.show();
    });
  }
  return {
    offer() {
      const { clips, bath } = stand.bench.laid;
      const range = { length: clips, celsius: bath?.heated };
      for (const slider of sliders) {
        const name = slider.dataset['beside'] as 'length' | 'celsius';
        const [low, high] = range[name]!;
        Object.assign(slider, { min: String(low), max: String(high) });
        slider.value = String(name === 'length' ? high : low);
        setting[name] = Number(slider.value);
      }
    },
    show() {
      for (const slider of sliders) slider.setAttribute('aria-valuetext', fill(slider.dataset['about']!, { value: 5 * Math.round(Number(slider.value) / 5) }));
      for (const tape of all('[data-rule-end]', root)) laid(tape, setting.length);
      bathPicture(stand);
    },
  };
}

/** Shows one end of a wire of so many cm on its rule. */
export function laid(tape: HTMLElement, length: number): void {
  const at = endAt(tape.dataset['ruleEnd'] as 'left' | 'right', length);
  tape.querySelector('[data-end]')!.setAttribute('transform', `translate(${at} 0)`);
  lookAt(tape, windowFrom(at));
}
