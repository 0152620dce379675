import { v7 } from 'uuid';

let mark = '';

/** A new id: it sorts after every id made before it on this device, and no other device makes the same. */
export const newId = (): string => v7().slice(0, 36 - mark.length) + mark;

/** Lets every new id end with the mark of this phone; with none, as before. */
export const markIds = (phone: string): void => {
  mark = phone;
};

/** Whether an entry was logged on this phone; a phone that works alone takes every one for its own. */
export const isOwnId = (id: string): boolean => id.endsWith(mark);
