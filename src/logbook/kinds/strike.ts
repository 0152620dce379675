import { entryOf, Id } from './envelope';

export const STRIKE_KINDS = { struck: entryOf('struck', { entry: Id }) };
