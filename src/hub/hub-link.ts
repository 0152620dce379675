/** A message as the hub keeps it. */
export interface Stored {
  /** Its place in the order in which the hub took them, from 1. */
  readonly seq: number;
  readonly subject: string;
  readonly body: Uint8Array<ArrayBuffer>;
}

/** How much the hub holds of a shop's entries. */
export interface Holding {
  /** When the hub began to hold them, as the hub writes it: another one means that it began anew. */
  readonly since: string;
  readonly count: number;
  /** The place of the last one. */
  readonly last: number;
}

/**
 * A line to the hub, signed in, for one shop. It knows no entry and no key. Everything rejects with a `HubFailure`; a line that is cut is
 * not mended, but another one is opened.
 */
export interface HubLink {
  look(): Promise<Holding>;
  /** Stores a message, or gives the one that is there already under its subject. */
  put(subject: string, body: Uint8Array): Promise<'stored' | Uint8Array<ArrayBuffer>>;
  get(subject: string): Promise<Uint8Array<ArrayBuffer> | undefined>;
  /** Hands over the entries after that place, some at a time and in order, and then each as it comes; until the line is cut. */
  follow(after: number, take: (some: readonly Stored[]) => Promise<void>): Promise<void>;
  /** Rejects within a few seconds where the line is dead. */
  isAlive(): Promise<void>;
  /** Settles once the line is cut. */
  readonly cut: Promise<void>;
  /** Cuts the line; never rejects. */
  close(): Promise<void>;
}

/** What a line is opened with. */
export interface SignIn {
  readonly password: string;
  /** The shop as the hub names it. */
  readonly shop: string;
}

/** Opens a line. `join` asks for a shop that is there; else the hub begins to hold it. */
export type Connect = (signIn: SignIn, how: 'join' | 'hold') => Promise<HubLink>;

/** Everyone signs in under one name; the password is the hub's. */
export const HUB_USER = 'shop';

export const entrySubject = (shop: string, id: string): string => `coatwait.${shop}.entry.${id}`;
export const photoSubject = (shop: string, id: string, piece: number | 'head'): string =>
  `coatwait.${shop}.photo.${id}.${piece}`;
/** The id of the entry that a subject is about. */
export const idOf = (subject: string): string => subject.slice(subject.lastIndexOf('.') + 1);
