import type { Milestone } from '../estimator/estimate';
import type { Coat } from '../logbook/fold/piece/pieces';

/** What a person may want to do to a piece. */
export type Act = 'coat' | 'flash-coat' | 'scuff' | 'level-sand' | 'rub-out' | 'promise' | 'hand-over';

/** An act as it is asked about: where on the piece, from which jar, in which way. Without more: as it was done last. */
export interface Question {
  readonly act: Act;
  readonly way?: Coat['how'] | undefined;
  readonly jarId?: string | undefined;
  /** Dry film that a sanding would take off, m; what is usual where absent. */
  readonly removedM?: number | undefined;
  /** The time that a promise is to be for, milliseconds since 1970; as it was given where absent. */
  readonly forMs?: number | undefined;
  /** A place on the piece; the whole piece where absent. */
  readonly zoneId?: string | undefined;
}

/** The moment of the film that an act waits for. */
export const AWAITS: { readonly [A in Act]?: Milestone } = {
  coat: 'recoat',
  'flash-coat': 'recoat',
  'level-sand': 'level',
  'rub-out': 'rubOut',
  'hand-over': 'rubOut',
};
