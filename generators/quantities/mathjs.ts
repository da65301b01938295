import bundle from 'mathjs/lib/browser/math.js';

/** mathjs in its build of one file: the other has over a thousand, and to load them all takes seconds. */
export const { evaluate, parse, unit } = bundle;
