/** Lets at most `places` pieces of work run at once; the others wait in order. */
export function turns(places: number): <T>(work: () => Promise<T>) => Promise<T> {
  let free = places;
  const waiting: (() => void)[] = [];
  return async (work) => {
    if (free > 0) free--;
    else await new Promise<void>((go) => waiting.push(go));
    try {
      return await work();
    } finally {
      const next = waiting.shift();
      if (next) next();
      else free++;
    }
  };
}
