import { type Stand, oneIn } from './bench-stand.ts';
import { onPress } from './elements.ts';

/** Lets something be wrong with the connections, and shows what it is. `put` puts the sound or the faulty bench there; gives what makes all sound again. */
export function connections(stand: Stand, put: (isFaulty: boolean) => void): () => void {
  const one = oneIn(stand.root);
  const [isFaulty, reveal] = [one<HTMLInputElement>('[data-faulty]'), one<HTMLButtonElement>('[data-do="bench-reveal"]')];
  const offer = () => (reveal.hidden = !isFaulty.checked);
  isFaulty.addEventListener('change', () => {
    offer();
    stand.say('');
    put(isFaulty.checked);
  });
  onPress('bench-reveal', () => stand.say(stand.words.faults[stand.bench.fault!]));
  return () => {
    isFaulty.checked = false;
    offer();
  };
}
