// English text of the bench.

export const BENCH_WORDS = {
  title: 'Bench',
  more: 'Settings and backup',
  start: 'Start a piece',
  plan: 'Plan',
  reminders: 'Reminders',
  board: 'Wall board',
  groups: { held: 'Held', now: 'Ready', next: 'Next', later: 'Wait', closed: 'Finished pieces' },
  noCoats: 'No coat yet',
  computing: 'Working it out…',
  closed: (when: string): string => `Finished ${when}`,
  coats: (count: number): string => (count === 1 ? '1 coat' : `${count} coats`),
  face: (name: string, coats: number, um: string | undefined): string => {
    if (coats === 0) return `${name}: bare`;
    const laid = `${name}: ${coats === 1 ? '1 coat' : `${coats} coats`}`;
    return um === undefined ? laid : `${laid}, ${um} in all`;
  },
  since: (when: string): string => `since ${when}`,
  wait: (span: string): string => `Wait about ${span}`,
} as const;

export const BENCH_EMPTY = {
  title: 'Nothing on the bench yet',
  text: 'Add a piece and log each coat as it goes on. You’ll see when you can touch it again, and how sure that is.',
  demo: 'Look around the demo shop',
  picture: 'An example: four coats of clear lacquer on spruce; the last one is still wet.',
  wood: 'Spruce',
  coat: (number: number): string => `Coat ${number}`,
} as const;

export const DEMO_BAR = {
  label: 'Demo shop',
  text: 'All invented.',
  leave: 'Leave the demo',
} as const;
