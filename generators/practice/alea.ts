import alea from 'seedrandom/lib/alea.js';

/** Stands in a page for seedrandom, of which the streams use one generator alone. */
export default { alea };
