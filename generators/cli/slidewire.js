#!/usr/bin/env node
// The sources are TypeScript, run as they are.
import { register } from 'tsx/esm/api';

register();
const [{ main }, { stopInOrder }] = await Promise.all([import('./main.ts'), import('./stop.ts')]);
stopInOrder();
process.exitCode = await main(process.argv.slice(2));
