import { SPRAYING } from '../bench-times';
import {
  atBench,
  check,
  days,
  drops,
  hardened,
  hold,
  hours,
  minutes,
  type StartingPlan,
  sprayed,
  times,
  wait,
} from './parts';

// Nitrocellulose lacquer. Waits at 20 to 22 C, 40 to 55 % RH, moving air: common practice, no source. The film's own moments replace them.

const recoat = [wait('recoat', minutes(45, 60, 120))];
const coat = [hold('blush'), sprayed('coat')];
/** Wet is darker and glossier: a colour is read when its film is dry. */
const readColour = [wait('rest', hours(2, 4, 24)), check('colour')];

/** An old clear lacquer, scuffed, softened with a flash coat of thinner and given two coats that melt in. */
export const MELT_IN: StartingPlan = {
  coatsADay: 3,
  steps: [
    atBench('clean', 20),
    atBench('scuff', 30),
    hold('blush'),
    { kind: 'work', task: 'flash-coat', place: 'booth', ...SPRAYING },
    wait('flash-off', minutes(5, 10, 15)),
    ...times(2, coat, recoat),
    ...hardened(days(3, 5, 7), 45, 60),
  ],
};

/** Chips filled drop by drop and levelled, then colour and clear. */
export const OPAQUE_TOUCH_UP: StartingPlan = {
  coatsADay: 3,
  steps: [
    atBench('clean', 20),
    atBench('scuff', 20),
    ...drops(3),
    wait('level-sand', days(7, 14, 30)),
    check('powders'),
    atBench('level-sand', 45),
    wait('rest', days(5, 7, 14)),
    check('sink'),
    ...times(2, [hold('blush'), sprayed('opaque-coat')], recoat),
    ...readColour,
    ...times(2, coat, recoat),
    ...hardened(days(3, 5, 7), 45, 60),
  ],
};

/** A chip in a clear finish, filled drop by drop, levelled and rubbed out. */
export const DROP_FILL: StartingPlan = {
  coatsADay: 3,
  steps: [atBench('clean', 20), ...drops(8), ...hardened(days(7, 14, 30), 45, 45, days(5, 7, 14))],
};

/** A thin instrument build: twelve coats, three a day, then weeks of rest. */
export const FULL_CLEAR: StartingPlan = {
  coatsADay: 3,
  steps: [atBench('clean', 20), ...times(12, coat, recoat), ...hardened(days(14, 21, 28), 120, 120)],
};

/** Thin tinted coats until the colour is right, closed in by clear. */
export const TONER: StartingPlan = {
  coatsADay: 4,
  steps: [
    atBench('clean', 20),
    atBench('scuff', 30),
    ...times(3, [hold('blush'), sprayed('toner-coat')], [wait('recoat', minutes(20, 30, 60))]),
    ...readColour,
    ...times(3, coat, recoat),
    ...hardened(days(3, 5, 7), 60, 60),
  ],
};

/** Every coat is on: what is left is to harden, level and rub out. */
export const COATS_ON: StartingPlan = { coatsADay: 3, steps: hardened(days(14, 21, 28), 60, 60) };
