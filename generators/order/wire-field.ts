import { z } from 'zod';
import type { KnownWires } from './known.ts';
import { quote } from './quote.ts';
import { parseWireAsk, WIRE_EXAMPLE, writeWireAsk, type WireAsk } from './wire-ask.ts';

/** One wire of an order: in words, or ready as a finished order holds it. Its issues are in plain words. */
export function wireField(known: KnownWires) {
  return z.unknown().transform((value, context): WireAsk => {
    const words = inWords(value);
    const read = words === undefined ? notAWire(value) : parseWireAsk(words, known);
    if ('ask' in read) return read.ask;
    for (const message of read.problems) context.issues.push({ code: 'custom', message, input: value });
    return z.NEVER;
  });
}

function notAWire(value: unknown): { problems: string[] } {
  return { problems: [`${quote(value)} is not a wire; write it on one line, such as "${WIRE_EXAMPLE}"`] };
}

/** Ready wires go through their words, so that they meet the same checks. */
function inWords(value: unknown): string | undefined {
  if (typeof value === 'string') return value;
  const wire = ready.safeParse(value);
  return wire.success ? writeWireAsk(wire.data) : undefined;
}

const ready = z.strictObject({
  material: z.string(),
  gauge: z.union([
    z.strictObject({ system: z.enum(['SWG', 'AWG']), number: z.number() }),
    z.strictObject({ mm: z.string() }),
  ]),
  lengthCm: z.number(),
});
