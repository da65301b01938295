/** What the address of a page names after its '#' and before its '?': 'set-048213'; as it stands where it is encoded badly. */
export function namedIn(hash: string): string {
  const [named = ''] = hash.replace(/^#/, '').split('?');
  try {
    return decodeURIComponent(named);
  } catch {
    return named;
  }
}
