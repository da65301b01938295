import { z } from 'zod';
import type { Written } from '../quantities/step.ts';
import { decimalText, entry, readTable, sourceText } from './table.ts';

const alphaSchema = z.strictObject({
  value: decimalText,
  celsius: z.number(),
  spread: decimalText.optional(),
  note: z.string().optional(),
});
const valueSchema = z.strictObject({
  source: z.string(),
  rho: decimalText.refine((text) => Number(text) > 0, 'must be above zero'),
  celsius: z.number(),
  alpha: alphaSchema.optional(),
  note: z.string().optional(),
});
const materialSchema = z
  .strictObject({ also: z.array(z.string()).optional(), nominal: z.string(), values: z.array(valueSchema).min(1) })
  .refine(({ values }) => new Set(values.map(({ source }) => source)).size === values.length, 'a source stands here twice')
  .refine(({ nominal, values }) => values.some(({ source }) => source === nominal), 'nominal names none of the sources below');

const materialsSchema = z
  .strictObject({
    sources: z.record(z.string(), z.strictObject({ name: sourceText })),
    materials: z.record(z.string(), materialSchema),
  })
  .superRefine(({ sources, materials }, context) => {
    for (const [name, { values }] of Object.entries(materials))
      values.forEach(({ source }, i) => {
        if (Object.hasOwn(sources, source)) return;
        const path = ['materials', name, 'values', i, 'source'];
        context.addIssue({ code: 'custom', path, message: `"${source}" is not among the sources above` });
      });
  });

/** Table values of the resistivity by material, each with its source and temperature. */
export type Materials = z.output<typeof materialsSchema>;
export type Material = z.output<typeof materialSchema>;

/** One printed value: resistivity in Ω m at a temperature, α per kelvin with the temperature it refers to. */
export interface TableValue {
  material: string;
  source: string;
  /** The source as it is printed. */
  sourceName: string;
  rho: Written;
  celsius: number;
  alpha?: { value: Written; celsius: number; spread?: Written | undefined } | undefined;
}

/** The materials from content/tables/materials.yaml; UserMistake with every place that is wrong. */
export function readMaterials(table: unknown, file = 'materials.yaml'): Materials {
  return readTable(materialsSchema, table, file);
}

/** The name under which a material stands in the table, also for its other names: 'eureka' is 'constantan'. */
export function materialName(materials: Materials, name: string): string {
  const names = Object.entries(materials.materials).flatMap(([own, { also = [] }]) => [own, ...also].map((each) => [each, own]));
  return entry('material', name, Object.fromEntries(names) as Record<string, string>);
}

/** The value of one source; UserMistake where there is no such material, or the source does not give it. */
export function tableValue(materials: Materials, name: string, source: string): TableValue {
  const material = materialName(materials, name);
  const { values } = entry('material', material, materials.materials);
  const found = entry(`value for ${material} from`, source, Object.fromEntries(values.map((value) => [value.source, value])));
  return {
    material,
    source,
    sourceName: entry('source', source, materials.sources).name,
    rho: found.rho,
    celsius: found.celsius,
    alpha: found.alpha,
  };
}

/** All that one source says, material by material. */
export function valuesOf(materials: Materials, source: string): TableValue[] {
  return Object.entries(materials.materials)
    .filter(([, { values }]) => values.some((value) => value.source === source))
    .map(([name]) => tableValue(materials, name, source));
}

/** The value that a simulated wire is drawn from. */
export function nominalValue(materials: Materials, name: string): TableValue {
  const material = materialName(materials, name);
  return tableValue(materials, material, entry('material', material, materials.materials).nominal);
}

/** How many times larger the resistivity is at one temperature than at another; `alpha` per kelvin, referred to `reference`. */
export function warming(alpha: number, reference: number, from: number, to: number): number {
  return (1 + alpha * (to - reference)) / (1 + alpha * (from - reference));
}
