/** A unit as the sheets use it. */
export interface Unit {
  tex: string;
  /** The same unit as mathjs reads it; '' for a pure number. */
  math: string;
  /** One of this unit is ten to this power of the coherent SI unit. */
  tens: number;
  /** The name of that coherent unit. */
  coherent: string;
}

const units: Record<string, Unit> = {
  '': { tex: '', math: '', tens: 0, coherent: '' },
  '%': { tex: '\\%', math: '', tens: -2, coherent: '' },
  'Ω': { tex: '\\Omega', math: 'ohm', tens: 0, coherent: 'Ω' },
  'mΩ': { tex: '\\mathrm{m}\\Omega', math: 'mohm', tens: -3, coherent: 'Ω' },
  m: { tex: '\\mathrm{m}', math: 'm', tens: 0, coherent: 'm' },
  cm: { tex: '\\mathrm{cm}', math: 'cm', tens: -2, coherent: 'm' },
  mm: { tex: '\\mathrm{mm}', math: 'mm', tens: -3, coherent: 'm' },
  '°C': { tex: '{}^{\\circ}\\mathrm{C}', math: 'degC', tens: 0, coherent: '°C' },
  'Ω m': { tex: '\\Omega\\,\\mathrm{m}', math: 'ohm m', tens: 0, coherent: 'Ω m' },
  'kΩ': { tex: '\\mathrm{k}\\Omega', math: 'kohm', tens: 3, coherent: 'Ω' },
  'Ω²': { tex: '\\Omega^{2}', math: 'ohm^2', tens: 0, coherent: 'Ω²' },
  'Ω/m': { tex: '\\Omega/\\mathrm{m}', math: 'ohm/m', tens: 0, coherent: 'Ω/m' },
  'Ω/cm': { tex: '\\Omega/\\mathrm{cm}', math: 'ohm/cm', tens: 2, coherent: 'Ω/m' },
  'Ω/°C': { tex: '\\Omega/{}^{\\circ}\\mathrm{C}', math: 'ohm/K', tens: 0, coherent: 'Ω/°C' },
  V: { tex: '\\mathrm{V}', math: 'V', tens: 0, coherent: 'V' },
  mV: { tex: '\\mathrm{mV}', math: 'mV', tens: -3, coherent: 'V' },
  'V/cm': { tex: '\\mathrm{V}/\\mathrm{cm}', math: 'V/cm', tens: 2, coherent: 'V/m' },
  'V/m': { tex: '\\mathrm{V}/\\mathrm{m}', math: 'V/m', tens: 0, coherent: 'V/m' },
  A: { tex: '\\mathrm{A}', math: 'A', tens: 0, coherent: 'A' },
  mA: { tex: '\\mathrm{mA}', math: 'mA', tens: -3, coherent: 'A' },
  'µA': { tex: '\\mu\\mathrm{A}', math: 'uA', tens: -6, coherent: 'A' },
  W: { tex: '\\mathrm{W}', math: 'W', tens: 0, coherent: 'W' },
  'mm²': { tex: '\\mathrm{mm}^{2}', math: 'mm^2', tens: -6, coherent: 'm²' },
  'm²': { tex: '\\mathrm{m}^{2}', math: 'm^2', tens: 0, coherent: 'm²' },
  '/°C': { tex: '/{}^{\\circ}\\mathrm{C}', math: 'K^-1', tens: 0, coherent: '/°C' },
  '°': { tex: '{}^{\\circ}', math: 'deg', tens: 0, coherent: '°' },
};

/** The unit of that name; a name that is not in the list is a mistake of the program. */
export function unit(name: string): Unit {
  const found = units[name];
  if (!found) throw new Error(`no unit "${name}" in unit.ts`);
  return found;
}

/** What a keyboard writes in place of letters that it has not. */
const KEYBOARD: Readonly<Record<string, string>> = { '/K': '/°C', '/C': '/°C', C: '°C' };

/** The unit that someone typed, by the letters of the list or those of a keyboard ('kohm', 'ohm/m', 'mm2'); nothing where there is none. */
export function unitTyped(text: string): Unit | undefined {
  const plain = text.replaceAll('\u{2126}', 'Ω').replaceAll('μ', 'µ').replaceAll(' ', '');
  const same = (name: string) => name.replaceAll(' ', '') === plain;
  const found = Object.entries(units).find(([name, { math }]) => same(name) || (math !== '' && (same(math) || same(math.replace('^', '')))));
  const other = KEYBOARD[plain];
  return found?.[1] ?? (other === undefined ? undefined : units[other]);
}
