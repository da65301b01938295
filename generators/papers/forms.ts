/** How a question is put, in the order in which a paper has them. */
export const FORMS = ['choice', 'assertion', 'words', 'numeric', 'figure', 'structured', 'case'] as const;
export type Form = (typeof FORMS)[number];

/** A part is put in one of these: assertion and reason is a choice, and a case is made of parts. */
export const PART_FORMS = ['choice', 'words', 'numeric', 'figure', 'structured'] as const satisfies readonly Form[];
export type PartForm = (typeof PART_FORMS)[number];

/** Difficulty, from easy to hard. */
export const LEVELS = ['1', '2', '3'] as const;
