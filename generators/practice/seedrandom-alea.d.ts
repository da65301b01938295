declare module 'seedrandom/lib/alea.js' {
  import type { alea } from 'seedrandom';
  const generator: typeof alea;
  export default generator;
}
