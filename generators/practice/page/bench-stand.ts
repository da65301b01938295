import type { BoxName } from '../../experiments/on-bench.ts';
import { type Setting, type StudentBench, needle } from '../bench.ts';
import { type BenchWords, needleInWords } from './bench-words.ts';

/** A setting that the controls change. */
export type Changing = { -readonly [K in keyof Setting]: Setting[K] } & { out: Record<BoxName, Set<number>> };

/** A bench on the page: what stands on it, how it is set, and how the page shows and says it. */
export interface Stand {
  root: HTMLElement;
  words: BenchWords;
  bench: StudentBench;
  setting: Changing;
  say(text: string): void;
  show(): void;
}

/** As a bench is found: the jockey lifted at mid-wire, the key open, the protective resistance in, all plugs in. */
export const atFirst = (): Changing => ({
  pair: 0,
  firstIn: 'left',
  out: { box: new Set(), 'second box': new Set(), 'ratio arms': new Set() },
  millimetres: 500,
  isPressed: false,
  isClosed: false,
  isProtected: true,
  length: 0,
  celsius: 0,
});

/** The needle as it stands now, in words. */
export const needleNow = ({ bench, setting, words }: Stand) => needleInWords(needle(bench, setting), bench, setting, words);

/** The only element of a part of the page that a selector names. */
export const oneIn =
  (root: ParentNode) =>
  <E extends Element = HTMLElement>(selector: string): E =>
    root.querySelector<E>(selector)!;
