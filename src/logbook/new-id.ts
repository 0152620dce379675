import { v7 } from 'uuid';

/** A new id: it sorts after every id made before it on this device, and no other device makes the same. */
export const newId = (): string => v7();
