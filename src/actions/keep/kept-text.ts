// Small things that this phone keeps beside the logbook. Where its storage is switched off or full they last as long as the page.

/** The text kept under a key; null where there is none. */
export function keptText(key: string): string | null {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

/** What was kept under a key by {@link keep}; undefined where there is nothing, or what lies there is not ours. */
export function kept(key: string): unknown {
  try {
    return JSON.parse(keptText(key) ?? 'null') ?? undefined;
  } catch {
    return undefined;
  }
}

/** Keeps a text under a key. */
export function keepText(key: string, text: string): void {
  try {
    localStorage.setItem(key, text);
  } catch {
    // It holds until the page is closed.
  }
}

/** Keeps plain data in place of what was kept before; undefined drops that. */
export function keep(key: string, value: object | undefined): void {
  try {
    if (value) localStorage.setItem(key, JSON.stringify(value));
    else localStorage.removeItem(key);
  } catch {
    // It holds until the page is closed.
  }
}
