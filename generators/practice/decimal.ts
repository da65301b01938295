/** Ways of rounding, by the numbers that decimal.js has for them. */
type Rounding = 2 | 3 | 4 | 6;

/**
 * In a page, what quantities/written.ts uses of decimal.js, and no more: a twentieth of its size. A test holds the two
 * together. The value is sign × d₁.d₂d₃… × 10^e; `figures` end in no zero and are none for zero.
 */
export class Decimal {
  static readonly ROUND_CEIL = 2;
  static readonly ROUND_FLOOR = 3;
  static readonly ROUND_HALF_UP = 4;
  static readonly ROUND_HALF_EVEN = 6;
  readonly e: number;
  readonly sign: '' | '-';
  readonly figures: string;

  constructor(value: number | string) {
    const [, sign = '', whole = '', decimals = '', power = '0'] = /^(-?)(\d*)\.?(\d*)(?:e([+-]?\d+))?$/.exec(String(value))!;
    const all = (whole + decimals).replace(/^0+/, '');
    this.sign = sign as '' | '-';
    this.figures = all.replace(/0+$/, '');
    this.e = all === '' ? 0 : Number(power) - decimals.length + all.length - 1;
  }

  isZero(): boolean {
    return this.figures === '';
  }

  toSignificantDigits(count: number, mode: Rounding = Decimal.ROUND_HALF_UP): Decimal {
    return this.keeping(count, mode);
  }

  toDecimalPlaces(decimals: number, mode: Rounding = Decimal.ROUND_HALF_UP): Decimal {
    return this.keeping(this.e + 1 + decimals, mode);
  }

  toFixed(decimals: number): string {
    const { figures, e } = this.toDecimalPlaces(decimals);
    const padded = '0'.repeat(Math.max(0, -e)) + figures.padEnd(e + 1 + decimals, '0');
    const point = Math.max(1, e + 1);
    return `${this.isZero() ? '' : this.sign}${padded.slice(0, point)}${decimals > 0 ? `.${padded.slice(point).padEnd(decimals, '0')}` : ''}`;
  }

  toExponential(decimals: number): string {
    const { sign, figures, e } = this.keeping(decimals + 1, Decimal.ROUND_HALF_UP);
    const all = figures.padEnd(decimals + 1, '0');
    return `${sign}${all[0]}${decimals > 0 ? `.${all.slice(1)}` : ''}e${e < 0 ? '-' : '+'}${Math.abs(e)}`;
  }

  /** The same with so many of its figures, which may be none or, for a value below half a unit, fewer than none. */
  private keeping(count: number, mode: Rounding): Decimal {
    const { figures, sign, e } = this;
    if (figures.length <= count) return this;
    const kept = BigInt(figures.slice(0, Math.max(0, count)));
    const rest = '0'.repeat(Math.max(0, -count)) + figures.slice(Math.max(0, count));
    const isAway = mode === Decimal.ROUND_CEIL ? sign === '' : mode === Decimal.ROUND_FLOOR ? sign === '-' : rest === '5' ? mode === Decimal.ROUND_HALF_UP || kept % 2n === 1n : rest > '5';
    return new Decimal(`${sign}${kept + (isAway ? 1n : 0n)}e${e - count + 1}`);
  }
}
