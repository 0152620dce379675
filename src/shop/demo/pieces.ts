import type { EntryOf } from '../../logbook/entry';
import { DEMO_GRITS, DEMO_PIECES } from '../../words/demo';
import { markChip } from './chip';
import type { fillDemoJars } from './jars';
import type { Pen } from './pen';
import { m2, um } from './said';

/** What the pieces of the demo are coated with, and in what air. */
export interface DemoStock {
  readonly jars: ReturnType<typeof fillDemoJars>;
  readonly air: ReadonlyMap<number, string>;
}
type CoatBody = Pick<EntryOf<'coat-laid'>, 'piece' | 'jar' | 'how'>;

function coat(pen: Pen, body: CoatBody, wetUm: number, atMs: number, air: string | undefined): void {
  const film = { by: 'wet', wetFilm: um(wetUm) } as const;
  pen.write({ kind: 'coat-laid', ...body, film, ...(air === undefined ? {} : { air }) }, atMs);
}

/** Twelve thin coats over four days, now left alone to harden. */
export function layUkulele(pen: Pen, { jars, air }: DemoStock): void {
  const piece = pen.newId();
  pen.write(
    { kind: 'piece-started', piece, ...DEMO_PIECES.ukulele, base: 'sealed', area: m2(0.14) },
    pen.daysAgo(13, 8, 30),
  );
  for (const days of [13, 12, 11, 10])
    for (const hour of [9, 11, 14])
      coat(pen, { piece, jar: jars.gloss, how: 'spray' }, 85, pen.daysAgo(days, hour), air.get(days));
}

/** An old finish under repair: a flash coat yesterday and the third coat half an hour ago. */
export function layClock(pen: Pen, { jars, air }: DemoStock): void {
  const piece = pen.newId();
  const base = { base: 'old-redissolves', oldFilm: um(45), area: m2(0.31) } as const;
  pen.write({ kind: 'piece-started', piece, ...DEMO_PIECES.clock, ...base }, pen.daysAgo(1, 8, 30));
  coat(pen, { piece, jar: jars.gloss, how: 'flash' }, 30, pen.daysAgo(1, 9, 10), air.get(1));
  coat(pen, { piece, jar: jars.gloss, how: 'spray' }, 90, pen.daysAgo(1, 9, 45), air.get(1));
  coat(pen, { piece, jar: jars.gloss, how: 'spray' }, 85, pen.daysAgo(1, 12, 15), air.get(1));
  coat(pen, { piece, jar: jars.gloss, how: 'spray' }, 85, pen.minutesAgo(35), air.get(0));
}

/** A pigmented piece, and what it did when it was tried; gives its id. */
export function layCaddy(pen: Pen, { jars, air }: DemoStock): string {
  const piece = pen.newId();
  pen.write(
    { kind: 'piece-started', piece, ...DEMO_PIECES.caddy, base: 'bare-wood', area: m2(0.12) },
    pen.daysAgo(6, 9),
  );
  coat(pen, { piece, jar: jars.white, how: 'spray' }, 90, pen.daysAgo(6, 9, 30), air.get(6));
  coat(pen, { piece, jar: jars.white, how: 'spray' }, 90, pen.daysAgo(6, 11, 45), air.get(6));
  coat(pen, { piece, jar: jars.white, how: 'spray' }, 80, pen.daysAgo(5, 10), air.get(5));
  pen.write({ kind: 'checked', piece, test: 'print', result: 'passes' }, pen.daysAgo(3, 17));
  pen.write({ kind: 'checked', piece, test: 'gum', result: 'fails' }, pen.daysAgo(1, 16, 30));
  return piece;
}

/** Two full coats, level-sanded, about to be rubbed out. */
export function layStand(pen: Pen, { jars, air }: DemoStock): void {
  const piece = pen.newId();
  pen.write(
    { kind: 'piece-started', piece, ...DEMO_PIECES.stand, base: 'sealed', area: m2(0.42) },
    pen.daysAgo(13, 9),
  );
  coat(pen, { piece, jar: jars.full, how: 'spray' }, 110, pen.daysAgo(13, 10), air.get(13));
  coat(pen, { piece, jar: jars.full, how: 'spray' }, 110, pen.daysAgo(13, 12), air.get(13));
  pen.write({ kind: 'checked', piece, test: 'gum', result: 'passes' }, pen.daysAgo(4, 9));
  pen.write(
    { kind: 'sanded', piece, removed: um(14), grit: DEMO_GRITS.level, stage: 'level' },
    pen.daysAgo(4, 9, 20),
  );
  markChip(pen, piece);
}
