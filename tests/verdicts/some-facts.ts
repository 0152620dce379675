import { MILESTONES, type Milestone } from '../../src/estimator/estimate';
import type { FinishName } from '../../src/estimator/finishes/traits';
import type { Act } from '../../src/verdicts/act';
import type { Facts } from '../../src/verdicts/facts';
import { type Moment, momentsOf } from '../../src/verdicts/moments';
import type { Reason } from '../../src/verdicts/reason';
import { verdictOn } from '../../src/verdicts/verdict';

export const DAY = 86_400_000;
/** The zero of these tests. */
export const T0 = Date.UTC(2026, 0, 5, 9);

/** Days after the last coat: earliest, likely, late. */
export const USUAL_DAYS: Readonly<Record<Milestone, readonly [number, number, number]>> = {
  touch: [0.01, 0.02, 0.03],
  recoat: [0.03, 0.04, 0.08],
  level: [10, 14, 20],
  rubOut: [14, 21, 28],
  settled: [40, 60, 90],
};

/** The moments of a film so many days after its last coat at {@link T0}. */
export const momentsAt = (
  nowMs: number,
  done: Pick<Facts, 'sandings'> = { sandings: [] },
): readonly Moment[] =>
  momentsOf(
    { coats: [{ atMs: T0 }], ...done },
    {
      startMs: T0,
      estimate: {
        milestones: Object.fromEntries(
          MILESTONES.map((name) => {
            const [earliest, likely, late] = USUAL_DAYS[name];
            const s = (days: number): number => days * 86_400;
            return [name, { earliestS: s(earliest), likelyS: s(likely), lateS: s(late) }];
          }),
        ) as never,
      },
    },
    nowMs,
  );

const NOTHING_KNOWN: Facts['oldFinish'] = {
  finish: 'unknown',
  signs: [],
  isSeen: false,
  knownMs: undefined,
  sanding: 'any',
  lead: undefined,
  leadMs: undefined,
};

/** One coat of lacquer on bare wood so many days ago, and whatever a row says otherwise. */
export function someFacts(days: number, more: Partial<Facts> = {}): Facts {
  const nowMs = T0 + days * DAY;
  return {
    nowMs,
    startedMs: T0 - DAY,
    closedMs: undefined,
    base: 'bare-wood',
    coats: [{ atMs: T0, how: 'spray', finish: 'nitrocellulose' }],
    sandings: [],
    checks: [],
    clock: 'ready',
    moments: momentsAt(nowMs, { sandings: more.sandings ?? [] }),
    jar: aJar('nitrocellulose'),
    air: {},
    sandingK: 294.15,
    above: { what: 'wood', filmM: 100e-6 },
    promisedMs: undefined,
    oldFinish: NOTHING_KNOWN,
    build: undefined,
    windowEnd: undefined,
    coming: ['level-sand', 'rub-out', 'hand-over'],
    overrides: [],
    grounds: [],
    ...more,
  };
}

export const aJar = (
  finish: FinishName,
  more: Partial<NonNullable<Facts['jar']>> = {},
): NonNullable<Facts['jar']> => ({
  name: 'Gloss',
  finish,
  hazards: [],
  mixedMs: T0 - 10 * DAY,
  ...more,
});

export const oldFinish = (more: Partial<Facts['oldFinish']>): Facts['oldFinish'] => ({
  ...NOTHING_KNOWN,
  ...more,
});

/** What one rule says of an act. */
export const reasonBy = (rule: string, act: Act, facts: Facts): Reason | undefined =>
  verdictOn({ act }, facts).reasons.find((reason) => reason.rule === rule);
