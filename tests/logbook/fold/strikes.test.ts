import fc from 'fast-check';
import { expect, test } from 'vitest';
import { struckIds } from '../../../src/logbook/fold/strikes';
import { entry, id, layCoat, strike } from '../entries';

const COATS = 3;
const toLog = (targets: readonly number[]) => [
  ...Array.from({ length: COATS }, (_, n) => entry(n, layCoat())),
  ...targets.map((target, n) => entry(COATS + n, strike(id(target)))),
];

/** The rule as it is told: struck is what some strike strikes that is not itself struck. Only for logs without rings. */
function struckByTheRule(targets: readonly number[], n: number): boolean {
  return targets.some((target, strikeN) => target === n && !struckByTheRule(targets, COATS + strikeN));
}

// A strike strikes something logged before it, as it does in every honest log.
const honestTargets = fc
  .array(fc.nat(), { maxLength: 12 })
  .map((picks) => picks.map((pick, n) => pick % (COATS + n)));

test('an honest log is struck by the rule', () => {
  fc.assert(
    fc.property(honestTargets, (targets) => {
      const all = Array.from({ length: COATS + targets.length }, (_, n) => n);
      const struck = all.filter((n) => struckByTheRule(targets, n)).map(id);
      expect([...struckIds(toLog(targets))].sort()).toEqual(struck);
    }),
    { numRuns: 1000 },
  );
});

const anyTargets = fc.array(fc.integer({ min: 0, max: COATS + 8 }), { maxLength: 8 });

test('a forged log is struck the same in whatever order it arrives', () => {
  const arrivals = anyTargets.chain((targets) => {
    const log = toLog(targets);
    return fc.tuple(fc.constant(log), fc.shuffledSubarray(log, { minLength: log.length }));
  });
  fc.assert(
    fc.property(arrivals, ([log, arrived]) => {
      expect(struckIds(arrived)).toEqual(struckIds(log));
    }),
    { numRuns: 1000 },
  );
});
