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
};

/** The unit of that name; a name that is not in the list is a mistake of the program. */
export function unit(name: string): Unit {
  const found = units[name];
  if (!found) throw new Error(`no unit "${name}" in unit.ts`);
  return found;
}
