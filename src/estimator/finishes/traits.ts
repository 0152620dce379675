import type { CuringFinish } from './finish-law';
import type { RELEASE_BINDERS } from './release';

/** Every finish that the model has a law for. */
export type FinishName = CuringFinish | 'nitrocellulose' | keyof typeof RELEASE_BINDERS;

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

/** The steps and words that belong to a finish (common practice, no source). A finish without its line does not compile. */
export function finishTraits(finish: FinishName): FinishTraits {
  switch (finish) {
    case 'nitrocellulose':
    case 'acrylic':
    case 'cab':
    case 'shellac':
      return { meltsIn: true, blushes: true, takesRetarder: true, hasWindow: false };
    case 'waterborne':
      return { meltsIn: false, blushes: false, takesRetarder: false, hasWindow: false };
    case 'precatalysed':
    case 'conversion':
    case 'urethane':
      return { meltsIn: false, blushes: true, takesRetarder: true, hasWindow: true };
  }
}
