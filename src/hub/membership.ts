import { type Database, openDatabase } from '../logbook/storage/database';

/** That this phone is one of a shop's: what it joined with, and what it is called. */
export interface Membership {
  /** The whole code, as another phone would join with it. */
  readonly code: string;
  /** The mark in the ids of what is logged on this phone: ten hex digits. */
  readonly phone: string;
}

/** Keeps the membership on this phone, and nowhere else: it is no part of the logbook. */
export interface Memberships {
  read(): Promise<Membership | undefined>;
  keep(membership: Membership): Promise<void>;
  drop(): Promise<void>;
}

export function openMemberships(database: Database = openDatabase('coatwait-hub', 'hub')): Memberships {
  return {
    async read() {
      const [row] = await database.read(['member']).catch(() => []);
      const { code, phone } = { ...(row?.[1] as Partial<Membership> | undefined) };
      return typeof code === 'string' && typeof phone === 'string' ? { code, phone } : undefined;
    },
    keep: (membership) => database.write([['member', membership]]),
    drop: () => database.empty(),
  };
}
