/** The middle value; of two in the middle the larger. */
export const median = (values: number[]) => values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)]!;
