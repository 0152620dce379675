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
  window,
} from './parts';

// Waits at 20 to 22 C, 40 to 55 % RH, moving air: common practice, no source. The product's data sheet outranks them.

/** Waterborne: four coats a day at most, not below 18 C nor above 70 % RH. */
export const WATERBORNE: StartingPlan = {
  coatsADay: 4,
  steps: [
    atBench('clean', 20),
    ...times(4, [hold('cold'), hold('damp'), sprayed('coat')], [wait('recoat', minutes(60, 90, 120))]),
    wait('cure', days(7, 14, 21)),
    check('powders'),
    atBench('level-sand', 60),
    atBench('rub-out', 60),
    check('look-over'),
  ],
};

/** Shellac by pad: six sessions, two a day, and a long rest for a soft film. */
export const SHELLAC: StartingPlan = {
  coatsADay: 2,
  steps: [
    atBench('clean', 20),
    ...times(6, [applied('pad', 45)], [wait('recoat', hours(3, 5, 12))]),
    wait('rest', days(7, 14, 28)),
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
    wait('cure', days(3, 5, 10)),
    check('powders'),
    atBench('rub-out', 60),
    check('look-over'),
  ],
};
