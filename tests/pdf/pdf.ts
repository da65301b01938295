import { execFileSync } from 'node:child_process';

/** The output of a program that reads PDFs. */
function run(program: string, ...args: string[]): string {
  return execFileSync(program, args, { encoding: 'utf8', maxBuffer: 1e8 });
}

/** The text as it is laid out; letters of formulas are mathematical italics, which NFKC makes plain. */
export const textOf = (file: string) => run('pdftotext', '-layout', file, '-').normalize('NFKC').replaceAll('−', '-');

/** The tags of a tagged PDF with their text and attributes. */
export const structureOf = (file: string) => run('pdfinfo', '-struct-text', file).normalize('NFKC');

export const infoOf = (file: string) => run('pdfinfo', file);

/** Width and height of the paper in points, from what pdfinfo says. */
export function sizeIn(info: string): [number, number] {
  const [, width, height] = /^Page size: +([\d.]+) x ([\d.]+) pts/m.exec(info)!;
  return [Number(width), Number(height)];
}

const insides = new Map<string, string>();

/** Everything in the file, with streams unpacked and strings decoded: also what no reader shows. */
export function insidesOf(file: string): string {
  const read = insides.get(file) ?? unpacked(file);
  insides.set(file, read);
  return read;
}

function unpacked(file: string): string {
  const json = run('qpdf', '--json=2', '--json-key=qpdf', file);
  const raw = execFileSync('qpdf', ['--qdf', '--object-streams=disable', '--normalize-content=n', file, '-'], { maxBuffer: 1e9 });
  return `${json}\n${raw.toString('latin1')}`;
}

/** Whether each font is embedded, by its name. */
export function fontsOf(file: string): { name: string; embedded: boolean }[] {
  return run('pdffonts', file).trim().split('\n').slice(2).map((line) => {
    const [, name, embedded] = /^(.{36}) .{17} .{16} (\w+)/.exec(line)!;
    return { name: name!.trim(), embedded: embedded === 'yes' };
  });
}

/** Fails with its words where qpdf finds anything to complain about. */
export const check = (file: string) => run('qpdf', '--check', file);
