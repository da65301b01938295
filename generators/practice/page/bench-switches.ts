import { type Stand, needleNow } from './bench-stand.ts';
import { all } from './elements.ts';

/** A key that is closed for so long is told of, in ms; common practice, no source. */
const WARMS = 20_000;

/** The key and the protective resistance, worked where they are drawn. */
export function switches(stand: Stand): void {
  const { root, setting, words } = stand;
  let warming: ReturnType<typeof setTimeout> | undefined;
  for (const control of all('[data-switch]', root)) {
    const name = control.dataset['switch'] as 'isClosed' | 'isProtected';
    const turn = () => {
      setting[name] = !setting[name];
      stand.show();
      stand.say(`${name === 'isClosed' ? words.keys[setting.isClosed ? 'closed' : 'open'] : words.protectives[setting.isProtected ? 'in' : 'out']} ${needleNow(stand)}`);
      if (name !== 'isClosed') return;
      clearTimeout(warming);
      // Another set, put on the bench meanwhile, comes with its key open.
      if (setting.isClosed) warming = setTimeout(() => setting.isClosed && stand.say(words.warm), WARMS);
    };
    control.addEventListener('click', turn);
    control.addEventListener('keydown', (event) => {
      if ((event.key !== ' ' && event.key !== 'Enter') || event.repeat) return;
      event.preventDefault();
      turn();
    });
  }
}
