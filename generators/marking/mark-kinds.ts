import type { MarkKind } from './scheme.ts';

/** What an answer earns marks for. */
export const MARK_KINDS = ['method', 'answer', 'unit', 'figures'] as const satisfies MarkKind[];
