/** Why nothing goes to or comes from the hub; each has its sentence in the words. */
export type HubTrouble =
  | 'unreachable'
  | 'wrong-sign-in'
  | 'no-such-shop'
  | 'foreign-stream'
  | 'starting'
  | 'full'
  | 'this-phone-full';

/** Thrown by a link to the hub, with the trouble that it stands for. */
export class HubFailure extends Error {
  constructor(readonly trouble: HubTrouble) {
    super(trouble);
  }
}

/** The trouble that something thrown stands for. What is no failure of the hub's has cut the line. */
export const troubleOf = (thrown: unknown): HubTrouble =>
  thrown instanceof HubFailure ? thrown.trouble : 'unreachable';
