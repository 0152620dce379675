import {
  applied,
  atBench,
  check,
  days,
  hold,
  hours,
  minutes,
  type StartingPlan,
  sprayed,
  times,
  wait,
} from './parts';

// Nitrocellulose lacquer. Waits at 20 to 22 C, 40 to 55 % RH, moving air: common practice, no source. The estimator's own replace them.

const recoat = [wait('recoat', minutes(45, 60, 120))];
const coat = [hold('blush'), sprayed('coat')];

/** An old clear lacquer, scuffed, softened with a flash coat of thinner and given two coats that melt in. */
export const MELT_IN: StartingPlan = {
  coatsADay: 3,
  steps: [
    atBench('clean', 20),
    atBench('scuff', 30),
    hold('blush'),
    { kind: 'work', task: 'flash-coat', place: 'booth', minutes: 10, moveMinutes: 5 },
    wait('flash-off', minutes(5, 10, 15)),
    ...times(2, coat, recoat),
    wait('level-sand', days(3, 5, 7)),
    check('powders'),
    atBench('level-sand', 45),
    check('sink'),
    atBench('rub-out', 60),
    check('look-over'),
  ],
};

/** Chips filled drop by drop, then colour and clear. */
export const OPAQUE_TOUCH_UP: StartingPlan = {
  coatsADay: 3,
  steps: [
    atBench('clean', 20),
    atBench('scuff', 20),
    ...times(3, [applied('drop-fill', 10)], [wait('shrink-back', hours(3, 4, 5))]),
    wait('level-sand', days(7, 14, 30)),
    check('sink'),
    atBench('level-sand', 45),
    ...times(2, [hold('blush'), sprayed('opaque-coat')], recoat),
    check('colour'),
    ...recoat,
    ...times(2, coat, recoat),
    wait('level-sand', days(3, 5, 7)),
    check('powders'),
    atBench('level-sand', 45),
    atBench('rub-out', 60),
    check('look-over'),
  ],
};

/** A thin instrument build: twelve coats, three a day, then weeks of rest. */
export const FULL_CLEAR: StartingPlan = {
  coatsADay: 3,
  steps: [
    atBench('clean', 20),
    ...times(12, coat, recoat),
    wait('level-sand', days(14, 21, 28)),
    check('powders'),
    atBench('level-sand', 120),
    wait('rest', days(2, 3, 7)),
    check('sink'),
    atBench('rub-out', 120),
    check('look-over'),
  ],
};

/** Thin tinted coats until the colour is right, closed in by clear. */
export const TONER: StartingPlan = {
  coatsADay: 4,
  steps: [
    atBench('clean', 20),
    atBench('scuff', 30),
    ...times(3, [hold('blush'), sprayed('toner-coat')], [wait('recoat', minutes(20, 30, 60))]),
    check('colour'),
    ...recoat,
    ...times(3, coat, recoat),
    wait('level-sand', days(3, 5, 7)),
    check('powders'),
    atBench('level-sand', 60),
    atBench('rub-out', 60),
    check('look-over'),
  ],
};
