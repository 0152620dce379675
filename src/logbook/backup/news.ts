import type { Shop } from '../fold/fold';
import type { Loaded, SetAside } from '../storage/store';
import { union } from '../union';

/** What of this is not kept already. Something unreadable never takes the place of what is there. */
export function news(brought: Loaded, { entries }: Shop, aside: readonly SetAside[]): Loaded {
  const united = union([...entries.values(), ...brought.entries]);
  const keys = new Set([...united.keys(), ...aside.map(({ key }) => key)]);
  return {
    entries: [...united.values()].filter((entry) => entries.get(entry.id) !== entry),
    setAside: brought.setAside.filter(({ key }) => !keys.has(key)),
  };
}
