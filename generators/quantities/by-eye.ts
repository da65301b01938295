import { fitThroughOrigin } from './origin-line.ts';
import type { Summary } from './step.ts';
import { fitLine } from './summary.ts';

/**
 * Lines that people lay by eye differ from each other in slope and intercept by about the standard uncertainties of the
 * best-fit line (Mosteller, Siegel, Trapido and Youtz, Eye fitting straight lines, The American Statistician 35, 1981;
 * from memory). Two of them hold nearly everybody.
 */
const TIMES = 2;

/**
 * Plotting and reading off to half a millimetre, on a line that fills half of a paper of 14 × 10 squares:
 * 0.5 mm at two ends 70 mm apart across and 50 mm apart up, in quadrature, is 1.7 % of a slope; 0.5 mm of 50 mm is 1 % of a rise.
 */
const OF_SLOPE = 0.02;
const OF_RISE = 0.01;

/** How far a line that a student lays by eye through the points may lie from the best-fit line: half the width, in the summary's unit. */
export function byEye(by: Summary['by'], [x, y]: readonly (readonly number[])[]): number {
  switch (by) {
    case 'slope': {
      const { slope, uSlope } = fitLine(x!, y!);
      return TIMES * uSlope + OF_SLOPE * Math.abs(slope);
    }
    case 'slope through origin': {
      const { slope, uSlope } = fitThroughOrigin(x!, y!);
      return TIMES * uSlope + OF_SLOPE * Math.abs(slope);
    }
    case 'intercept': {
      const { slope, uIntercept } = fitLine(x!, y!);
      return TIMES * uIntercept + OF_RISE * Math.abs(slope) * Math.max(...x!.map(Math.abs));
    }
    case 'mean':
      throw new Error('a mean is not laid by eye');
  }
}
