import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { inexact } from './forbidden.ts';

const generators = new URL('../../generators/', import.meta.url);
const folders = ['apparatus', 'experiments', 'questions'].filter((folder) => existsSync(new URL(folder, generators)));
const files = folders.flatMap((folder) =>
  readdirSync(new URL(folder, generators), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.ts'))
    .map((name) => `${folder}/${name}`),
);

describe('numbers that a student sees are made with + − × ÷ and square roots, the same bits everywhere', () => {
  test('the apparatus is among the files looked at', () => {
    expect(files).toContain('apparatus/bridge.ts');
  });

  test.each(files)('%s', (file) => {
    expect(inexact(readFileSync(new URL(file, generators), 'utf8'))).toEqual([]);
  });
});

describe('the search finds', () => {
  test.each([
    ['const a = Math.sin(1);', 'line 1: Math.sin'],
    ['\nconst a = 2 ** 3;', 'line 2: **'],
    ['let a = 2; a **= 3;', 'line 1: **='],
    ['const a = Math.random();', 'line 1: Math.random'],
    ['const { exp } = Math;', 'line 1: Math'],
    ["const a = Math['log'](2);", 'line 1: Math'],
    ['const a = [1].map(Math.cbrt);', 'line 1: Math.cbrt'],
    ['const a = (2.15).toFixed(1);', 'line 1: toFixed'],
    ["import { pow } from 'mathjs';", "line 1: 'mathjs'"],
  ])('%s', (source, found) => expect(inexact(source)).toEqual([found]));

  test('nothing in comments, words, or what is exact', () => {
    expect(inexact("// Math.sin\nconst a = 'Math.exp **' + Math.sqrt(2) + Math.PI;")).toEqual([]);
  });
});
