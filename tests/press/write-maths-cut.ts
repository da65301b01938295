import { writeFileSync } from 'node:fs';
import { MATHS_CUT } from '../../generators/press/maths-face.ts';
import { cutMaths } from './cut-maths.ts';

writeFileSync(MATHS_CUT, await cutMaths());
