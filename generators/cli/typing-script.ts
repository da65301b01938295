import { fileURLToPath } from 'node:url';
import { readyFormulas } from '../practice/ready-formulas.ts';
import { bundle } from '../press/bundle.ts';
import type { Program } from '../quantities/program.ts';

const entry = fileURLToPath(new URL('../practice/typing/main.ts', import.meta.url));

/** The script of a page for typing answers: the formulas of its sheets, and the engine that `slidewire mark` judges with. */
export async function typingScript(programs: readonly Program[]): Promise<string> {
  // esbuild works in a process of its own while the formulas are made ready.
  const bundled = bundle({ entryPoints: [entry] });
  const formulas = readyFormulas(programs);
  // No text of ours can end the element that it stands in.
  return `const formulas=${formulas};\n${await bundled}`.replaceAll('</script', '<\\/script');
}
