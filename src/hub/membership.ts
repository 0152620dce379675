import { type Database, openDatabase } from '../logbook/storage/database';

/** That this phone is one of a shop's. */
export interface Membership {
  /** Of the hub. */
  readonly password: string;
  /** Of the shop. */
  readonly secret: string;
  /** The mark in the ids of what is logged on this phone. */
  readonly phone: string;
}

/** Keeps the membership on this phone and nowhere else: it is no part of the logbook, nor of a backup. */
export interface Memberships {
  read(): Promise<Membership | undefined>;
  keep(membership: Membership): Promise<void>;
  drop(): Promise<void>;
}

export function openMemberships(database: Database = openDatabase('coatwait-hub', 'hub')): Memberships {
  return {
    async read() {
      const [row] = await database.read(['member']).catch(() => []);
      const { password, secret, phone } = { ...(row?.[1] as Partial<Membership> | undefined) };
      return password && secret && phone ? { password, secret, phone } : undefined;
    },
    keep: (membership) => database.write([['member', membership]]),
    drop: () => database.empty(),
  };
}

/** What this phone knows to be on the hub, by id. */
export const openKnownDatabase = (): Database => openDatabase('coatwait-hub-known', 'known');
