import { hmac } from '@noble/hashes/hmac.js';
import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import seedrandom from 'seedrandom';

/** One stream of random numbers. Only + − × ÷ are used, so that every machine and browser gives the same bits. */
export interface Random {
  /** Uniform on [0, 1). */
  uniform(): number;
  /** Uniform on [low, high). */
  between(low: number, high: number): number;
  /** A whole number, low ≤ n ≤ high. */
  integer(low: number, high: number): number;
  /** Mean 0, standard deviation 1: the sum of twelve uniforms less six, so never beyond ±6. */
  normal(): number;
  pick<T>(list: readonly T[]): T;
  /** A new list in random order (Fisher–Yates). */
  shuffle<T>(list: readonly T[]): T[];
}

/** Named streams under one seed: the same name gives the same numbers, whatever else was drawn before. */
export interface Streams {
  of(...name: (string | number)[]): Random;
  /** Streams whose names all start with these parts. */
  within(...name: (string | number)[]): Streams;
}

/** HMAC-SHA256 in hex; the parts are joined as JSON, so that ['a', 'b'] and ['ab'] differ. */
export function keyedHash(key: string, parts: readonly (string | number)[]): string {
  return bytesToHex(hmac(sha256, utf8ToBytes(key), utf8ToBytes(JSON.stringify(parts))));
}

/**
 * The streams of a seed. seedrandom takes different short strings for the same seed
 * ('ab' and 'abab'), so it is never given a raw one: always a keyed hash.
 */
export function streams(seed: string, prefix: readonly (string | number)[] = []): Streams {
  return {
    of: (...name) => random(seedrandom.alea(keyedHash(seed, [...prefix, ...name]))),
    within: (...name) => streams(seed, [...prefix, ...name]),
  };
}

function random(uniform: () => number): Random {
  const integer = (low: number, high: number) => low + Math.floor(uniform() * (high - low + 1));
  return {
    uniform,
    between: (low, high) => low + (high - low) * uniform(),
    integer,
    normal() {
      let sum = -6;
      for (let i = 0; i < 12; i++) sum += uniform();
      return sum;
    },
    pick(list) {
      if (list.length === 0) throw new RangeError('nothing to pick from: the list is empty');
      return list[integer(0, list.length - 1)]!;
    },
    shuffle(list) {
      const out = [...list];
      for (let i = out.length - 1; i > 0; i--) {
        const j = integer(0, i);
        [out[i], out[j]] = [out[j]!, out[i]!];
      }
      return out;
    },
  };
}
