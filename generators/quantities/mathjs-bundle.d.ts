declare module 'mathjs/lib/browser/math.js' {
  const bundle: typeof import('mathjs');
  export default bundle;
}
