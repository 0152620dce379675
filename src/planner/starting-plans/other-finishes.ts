import { PADDED_REST_DAYS } from '../../estimator/finishes/to-sheet';
import {
  applied,
  atBench,
  check,
  days,
  hardened,
  hold,
  hours,
  minutes,
  type StartingPlan,
  sprayed,
  times,
  wait,
  window,
} from './parts';

// Waits at 20 to 22 C, 40 to 55 % RH, moving air: common practice, no source. The product's data sheet outranks them.

const waterborne = [hold('cold'), hold('damp'), sprayed('coat')];
const recoat = [wait('recoat', minutes(60, 90, 120))];

/** Waterborne does not melt in: scuffed before the second day's coats, the last two on one day. The air that it asks for stands in its law. */
export const WATERBORNE: StartingPlan = {
  coatsADay: 3,
  steps: [
    atBench('clean', 20),
    ...times(3, waterborne, recoat),
    ...recoat,
    atBench('scuff', 20),
    ...times(2, waterborne, recoat),
    ...hardened(days(7, 14, 21), 60, 60),
  ],
};

/** Shellac by pad: seven sessions, one a day, the oil taken off with spirit a day or two later, and a long rest for a soft film. */
export const SHELLAC: StartingPlan = {
  coatsADay: 1,
  steps: [
    atBench('clean', 20),
    ...times(7, [applied('pad', 45)], [wait('recoat', hours(3, 5, 12))]),
    wait('rest', days(1, 1, 2)),
    atBench('spirit-off', 30),
    wait('rest', days(PADDED_REST_DAYS.earliest, PADDED_REST_DAYS.likely, PADDED_REST_DAYS.late)),
    check('no-print'),
    atBench('rub-out', 60),
    check('look-over'),
  ],
};

/** Catalysed: a sealer and two topcoats, each in the window of the one before: 45 min to 4 h. */
export const CATALYSED: StartingPlan = {
  coatsADay: 3,
  steps: [
    atBench('clean', 20),
    hold('damp'),
    sprayed('seal'),
    window(45, 240),
    sprayed('coat'),
    window(45, 240),
    sprayed('coat'),
    ...hardened(days(3, 5, 10), 60, 60),
  ],
};
