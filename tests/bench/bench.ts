/**
 * How fast it is. Speeds differ from machine to machine and with what else runs, so what counts are the ratios of one
 * run. `npm run bench` runs all of it, `npm run bench -- numbers press` those parts; not part of the tests.
 */
const PARTS = ['numbers', 'press', 'single', 'memory', 'marking', 'site'];

const asked = process.argv.slice(2);
for (const part of asked.length > 0 ? asked : PARTS) {
  console.log(`\n${part}`);
  await import(`./${part}.ts`);
}
