import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';

const MATHS_FONT = readFileSync(
  createRequire(import.meta.url).resolve('@fontsource/stix-two-math/files/stix-two-math-latin-400-normal.woff2'),
).toString('base64');

/** A document like a sheet: language, title, A4, a bundled font for everything, and what is given for its body. */
export function sample(body: string, { font = MATHS_FONT } = {}): string {
  return `<!doctype html><html lang="en-GB"><head><meta charset="utf-8"><title>Sample sheet</title><style>
@font-face { font-family: "Sheet maths"; src: url(data:font/woff2;base64,${font}) format("woff2") }
@page { size: A4 }
body, math { font-family: "Sheet maths" }
table { width: 100% }
section { break-after: page }
</style></head><body>${body}</body></html>`;
}

export const SHEET = `<h1>Wire K</h1><h2>Readings</h2>
<table><caption>Balance lengths</caption>
<tr><th scope="col">R</th><th scope="col">l</th></tr>
<tr><td>2.0</td><td>43.2</td></tr></table>
<p><span role="img" aria-label="X equals R over l"><math display="block"><mi>X</mi><mo>=</mo><mfrac><mi>R</mi><mi>l</mi></mfrac></math></span></p>`;

/** A document of so many pages. */
export function pages(count: number): string {
  return sample(`<section>${SHEET}</section>`.repeat(count - 1) + SHEET);
}
