/** Not the beginning of what the student's site keeps, so that clearing that leaves a class's answers alone. */
const nameOf = (code: string) => `slidewire typed ${code}`;

/** What was typed for a sheet in this browser, by answer; nothing where it keeps nothing, as for a file in some of them. */
export function typedBefore(code: string): Record<string, string> {
  try {
    return (JSON.parse(localStorage.getItem(nameOf(code)) ?? '{}') ?? {}) as Record<string, string>;
  } catch {
    return {};
  }
}

/** Keeps what is typed beside what another scheme's page has kept; whether the browser does keep it. */
export function keepTyped(code: string, texts: Readonly<Record<string, string>>): boolean {
  try {
    localStorage.setItem(nameOf(code), JSON.stringify({ ...typedBefore(code), ...texts }));
    return true;
  } catch {
    return false;
  }
}
