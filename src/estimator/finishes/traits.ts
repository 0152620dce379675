import { isCuring } from './finish-law';

/** Which steps and words belong to a finish. */
export interface FinishTraits {
  /** A new coat melts into the old one, and a flash coat of thinner opens it. */
  readonly meltsIn: boolean;
  /** Turns white when moisture settles in it. */
  readonly blushes: boolean;
  /** Slower solvent may be added to it. */
  readonly takesRetarder: boolean;
  /** The next coat has a latest time. */
  readonly hasWindow: boolean;
}

/** The steps and words that belong to a finish (common practice, no source). */
export const finishTraits = (finish: string): FinishTraits => ({
  meltsIn: !isCuring(finish),
  blushes: finish !== 'waterborne',
  takesRetarder: finish !== 'waterborne',
  hasWindow: isCuring(finish) && finish !== 'waterborne',
});
