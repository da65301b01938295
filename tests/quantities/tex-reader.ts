/** A reader of the TeX that formulas are printed in, strict about brackets: what it gives is what a person reads. */
export function readTex(tex: string): number {
  const tokens = tex.match(/\\times|\\frac|\\sqrt|\\pi|\\left\(|\\right\)|\\,|\d+(?:\.\d+)?|[-+^{}]/g) ?? [];
  if (tokens.join('') !== tex.replaceAll(' ', '')) throw new Error(`not read whole: ${tex}`);
  let next = 0;
  const take = (token: string) => {
    if (tokens[next] !== token) throw new Error(`${token} expected before ${tokens.slice(next).join(' ')} in ${tex}`);
    next++;
  };
  const inside = (open: string, close: string) => {
    take(open);
    const value = sum();
    take(close);
    return value;
  };

  /** Two signs never stand side by side: a minus opens a sum or nothing. */
  function sum(): number {
    let value = tokens[next] === '-' ? -afterMinus() : product();
    while (tokens[next] === '+' || tokens[next] === '-') value += tokens[next++] === '+' ? product() : -product();
    return value;
  }
  function afterMinus(): number {
    take('-');
    return product();
  }
  function product(): number {
    let value = power();
    while (tokens[next] === '\\times' || tokens[next] === '\\,') {
      next++;
      value *= power();
    }
    return value;
  }
  function power(): number {
    const base = atom();
    if (tokens[next] !== '^') return base;
    take('^');
    return base ** inside('{', '}');
  }
  /** What begins with a sign is a group, which nobody sees. */
  function bracketed(): number {
    take('\\left(');
    const value = tokens[next] === '{' ? inside('{', '}') : sum();
    take('\\right)');
    return value;
  }
  function atom(): number {
    const token = tokens[next];
    if (token === '\\left(') return bracketed();
    next++;
    if (token === '\\pi') return Math.PI;
    if (token === '\\sqrt') return Math.sqrt(inside('{', '}'));
    if (token === '\\frac') return inside('{', '}') / inside('{', '}');
    if (!/^\d/.test(token ?? '')) throw new Error(`a number expected, not ${token}, in ${tex}`);
    return Number(token);
  }

  const value = sum();
  if (next < tokens.length) throw new Error(`left over: ${tokens.slice(next).join(' ')} in ${tex}`);
  return value;
}
