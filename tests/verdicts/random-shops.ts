import fc from 'fast-check';
import type { Estimate } from '../../src/estimator/estimate';
import type { Entry, EntryBody } from '../../src/logbook/entry';
import { fold, type Shop } from '../../src/logbook/fold/fold';
import type { Piece } from '../../src/logbook/fold/piece/pieces';
import { FINISHES } from '../../src/logbook/kinds/mix/jar';
import { SPOT_READINGS, SPOT_SOLVENTS } from '../../src/science/old-finish/spot-tests';
import { CAUTIONS } from '../../src/words/air/cautions';
import { DAY_1_MS, entry, fillJar, JAR, layCoat, PIECE, startPiece } from '../logbook/entries';
import { anOutlook } from '../parts/an-outlook';

// Shops in which anything may have happened to one piece.

const HOUR_MS = 3_600_000;
const REASON = 'Only the hidden edge, the rest is hard.';

const of = <T>(...values: readonly T[]) => fc.constantFrom(...values);
const HOLDS = [
  'lead',
  'base-lifts',
  'film-prints',
  'film-gums',
  'window-closed',
  'no-melt',
  'isocyanate',
  'fire',
];

/** Anything that may be said of a piece, of its air or of its plan. */
const happening: fc.Arbitrary<EntryBody> = fc.oneof(
  { weight: 4, arbitrary: of(layCoat(), { ...layCoat(), how: 'flash' } as EntryBody) },
  fc.record({
    kind: fc.constant('sanded' as const),
    piece: fc.constant(PIECE),
    stage: of('scuff' as const, 'level' as const, 'rub-out' as const),
    removed: of({ text: '3', unit: 'um' as const }, { text: '40', unit: 'um' as const }),
  }),
  {
    weight: 2,
    arbitrary: fc.record({
      kind: fc.constant('checked' as const),
      piece: fc.constant(PIECE),
      test: of('print' as const, 'gum' as const, 'smell' as const, 'blush' as const),
      result: of('passes' as const, 'fails' as const),
    }),
  },
  fc.record({
    kind: fc.constant('spot-tested' as const),
    piece: fc.constant(PIECE),
    solvent: fc.constantFrom(...SPOT_SOLVENTS),
    dwell: fc.constant({ text: '2', unit: 'min' as const }),
    reading: fc.constantFrom(...SPOT_READINGS),
  }),
  fc.record({
    kind: fc.constant('old-finish-seen' as const),
    piece: fc.constant(PIECE),
    opaque: fc.boolean(),
    signs: fc.subarray(['polish' as const, 'crazed' as const]),
  }),
  fc.record({
    kind: fc.constant('lead-tested' as const),
    piece: fc.constant(PIECE),
    finding: of('none-found' as const, 'found' as const, 'treat-as-lead' as const),
  }),
  fc.record({
    kind: fc.constant('hold-overridden' as const),
    piece: fc.constant(PIECE),
    rule: fc.constantFrom(...HOLDS),
    act: of('level-sand', 'coat', 'promise'),
    reason: fc.constant(REASON),
  }),
  fc.record({
    kind: fc.constant('piece-promised' as const),
    piece: fc.constant(PIECE),
    promised: of('2026-04-20T15:00:00.000Z', '2026-06-20T15:00:00.000Z'),
  }),
  fc.record({
    kind: fc.constant('caution-silenced' as const),
    caution: fc.constantFrom(...CAUTIONS.map(({ id }) => id)),
    silenced: fc.constant(true),
  }),
  fc.record({
    kind: fc.constant('air-read' as const),
    temperature: of({ text: '9', unit: 'C' as const }, { text: '21', unit: 'C' as const }),
    humidity: of({ text: '45', unit: '%' as const }, { text: '85', unit: '%' as const }),
    movement: fc.constant('gentle' as const),
  }),
) as fc.Arbitrary<EntryBody>;

const hours = fc.tuple(
  fc.double({ min: 0.01, max: 900, noNaN: true }),
  fc.double({ min: 1, max: 3, noNaN: true }),
);
const band = hours.map(([first, by]) => [first, first * by, first * by * by] as const);
const outlook = fc.oneof(
  {
    weight: 5,
    arbitrary: fc.record({
      moments: fc.record({ touch: band, recoat: band, level: band, rubOut: band, settled: band }),
      windowEnd: fc.option(band),
    }),
  },
  fc.constantFrom('computing' as const, 'failed' as const),
);

export const shops = fc.record({
  base: of('bare-wood' as const, 'sealed' as const, 'old-redissolves' as const, 'old-closed' as const),
  finish: fc.constantFrom(...FINISHES),
  done: fc.array(fc.tuple(fc.integer({ min: 0, max: 800 }), happening), { maxLength: 9 }),
  isPlanned: fc.boolean(),
  isOwnWait: fc.boolean(),
  outlook,
  nowHour: fc.integer({ min: 801, max: 1600 }),
});
export type Said = typeof shops extends fc.Arbitrary<infer S> ? S : never;

const ownWait = (n: number, until: 'level-sand' | 'rub-out') => ({
  kind: 'wait',
  id: entry(n, startPiece()).id,
  until,
  minutes: { earliest: 30, likely: 60, late: 90 },
  isOwn: true,
});

/** A plan; in one of them the person has set an hour to harden before each sanding, whatever the film says. */
const planWith = (isOwnWait: boolean) =>
  ({
    kind: 'piece-planned',
    piece: PIECE,
    job: 'full-refinish',
    coatsADay: 3,
    steps: [
      {
        kind: 'work',
        id: entry(900, startPiece()).id,
        task: 'coat',
        place: 'booth',
        minutes: 10,
        isCoat: true,
      },
      ...(isOwnWait ? [ownWait(903, 'level-sand')] : []),
      { kind: 'work', id: entry(901, startPiece()).id, task: 'level-sand', place: 'bench', minutes: 60 },
      ...(isOwnWait ? [ownWait(904, 'rub-out')] : []),
      { kind: 'work', id: entry(902, startPiece()).id, task: 'rub-out', place: 'bench', minutes: 60 },
    ],
  }) as unknown as EntryBody;

export function shopOf({ base, finish, done, isPlanned, isOwnWait }: Said): Shop {
  const jar = fillJar() as Extract<EntryBody, { kind: 'jar-filled' }>;
  const entries: Entry[] = [
    entry(1, { ...startPiece(), base } as EntryBody, DAY_1_MS),
    entry(2, { ...jar, jar: JAR, product: { ...jar.product, finish } } as EntryBody, DAY_1_MS),
    ...(isPlanned ? [entry(3, planWith(isOwnWait), DAY_1_MS)] : []),
    ...done.map(([hour, body], n) => entry(10 + n, body, DAY_1_MS + hour * HOUR_MS)),
  ];
  return fold(entries);
}

export function outlookOf({ outlook: said }: Said, piece: Piece) {
  if (!piece.coats.some(({ how }) => how !== 'flash')) return { state: 'no-coats' } as const;
  if (said === 'computing') return { state: said } as const;
  if (said === 'failed') return { state: said, message: '' } as const;
  const ready = anOutlook(said.moments);
  const s = (hour: number): number => hour * 3600;
  const law = said.windowEnd && {
    finish: 'conversion',
    totalDryM: 60e-6,
    recoatUntil: {
      earliestS: s(said.windowEnd[0]),
      likelyS: s(said.windowEnd[1]),
      lateS: s(said.windowEnd[2]),
    },
  };
  const estimate = { ...ready.estimate, ...(law && { law }) } as Estimate;
  return { ...ready, estimate, startMs: (piece.coats.at(-1)?.atMs ?? DAY_1_MS) as number };
}

export const nowOf = ({ nowHour }: Said): number => DAY_1_MS + nowHour * HOUR_MS;
