/**
 * Stands in a page for zod: modules of the apparatus describe their tables with it as they load, but a page reads no
 * table. Whatever is asked of it is itself again.
 */
export const z: unknown = new Proxy(() => z, { get: () => z, apply: () => z });
