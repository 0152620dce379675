import 'fake-indexeddb/auto';
import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { coatCardWith, makeCard } from '../../src/actions/card/log-card';
import { filmSaidBy } from '../../src/actions/film-said';
import { takePhoto } from '../../src/actions/photo/take-photo';
import { planPiece } from '../../src/actions/plan/plan-piece';
import { overrideHolds } from '../../src/actions/verdicts/override-hold';
import { describeZone } from '../../src/actions/zone/describe-zone';
import { planDrops } from '../../src/actions/zone/plan-drops';
import type { Photos } from '../../src/logbook/storage/photos';
import { succeed } from '../../src/result';
import { id } from '../logbook/entries';
import { aBoxAndAJar, done, NOW_MS } from './a-shop';

const MINUTE_MS = 60_000;
const um = (text: string) => ({ text, unit: 'um' }) as const;
const g = (text: string) => ({ text, unit: 'g' }) as const;

describe('a coat that is laid once more', () => {
  test.each([
    { how: 'spray', film: { by: 'wet', wetFilm: um('85') } },
    { how: 'brush-fill', film: { by: 'usual', dryFilm: um('150') } },
    { how: 'spray', film: { by: 'passes', passes: 3, perPass: um('30') } },
  ] as const)('is said as it was typed: by $film.by', async ({ how, film }) => {
    const { open, piece, jar } = await aBoxAndAJar();
    done(await open.actions.layCoat({ piece, jar, how, film } as never, NOW_MS - 60 * MINUTE_MS));
    const coat = open.shop.value.pieces.get(piece)?.coats[0] ?? expect.unreachable();
    expect(filmSaidBy(coat)).toEqual(film);
    // A card beside it got the very same coat, at the same time.
    const { card } = done(
      await makeCard(
        open.needs,
        { piece, area: { text: '200', unit: 'cm2' }, faces: 1, bare: g('1'), division: g('0.001') },
        NOW_MS - 70 * MINUTE_MS,
      ),
    );
    expect(done(await coatCardWith(open.needs, card, coat))).toMatchObject({
      coat: coat.id,
      jar,
      how,
      film,
      at: new Date(NOW_MS - 60 * MINUTE_MS).toISOString(),
    });
  });
});

describe('a photo', () => {
  const taken = { picture: new Blob(['small']), width: 640, height: 480, original: new Blob(['as it came']) };
  const photosOf = (isFull = false) => {
    const kept = new Set<string>();
    const photos = {
      keep: async (photo: string) =>
        isFull ? { ok: false, failure: { kind: 'full' } } : succeed(void kept.add(photo)),
      drop: async (some: Iterable<string>) => {
        for (const photo of some) kept.delete(photo);
      },
    } as unknown as Photos;
    return { photos, kept };
  };
  const said = (piece: string) => ({ piece, light: 'plain', stage: 'before' }) as const;

  test('is kept, and noted with the checksum of the file that it was made from', async () => {
    const { open, piece } = await aBoxAndAJar();
    const { photos, kept } = photosOf();
    const logged = done(await takePhoto(open.needs, photos, said(piece), taken));
    expect([...kept]).toEqual([logged.photo]);
    expect(logged).toMatchObject({ width: 640, height: 480 });
    expect(logged.original).toBe(createHash('sha256').update('as it came').digest('hex'));
  });

  test('that this device will not keep is not noted; one that cannot be noted is not kept', async () => {
    const { open, piece } = await aBoxAndAJar();
    const before = open.shop.value.entries.size;
    expect(await takePhoto(open.needs, photosOf(true).photos, said(piece), taken)).toMatchObject({
      ok: false,
    });
    expect(open.shop.value.entries.size).toBe(before);
    const { photos, kept } = photosOf();
    expect(await takePhoto(open.needs, photos, said(id(0xee)), taken)).toMatchObject({ ok: false });
    expect([...kept]).toEqual([]);
  });
});

describe('drops that are planned', () => {
  const steps = (entry: { readonly steps: readonly object[] }) =>
    entry.steps.map((step) =>
      'task' in step ? step.task : 'until' in step ? step.until : 'check' in step ? step.check : '?',
    );
  const FILL = ['level-sand', 'powders', 'level-sand', 'rest', 'sink'];

  test('come before whatever else is planned, with the rest, the levelling and the look after a week', async () => {
    const { open, piece } = await aBoxAndAJar();
    const rubOut = { kind: 'work', id: id(0x41), task: 'rub-out', place: 'bench', minutes: 60 } as const;
    done(await planPiece(open.needs, { piece, coatsADay: 1, steps: [rubOut] }));
    const planned = done(await planDrops(open.needs, piece, { drops: 3, aDay: 2 }));
    const drops = steps(planned).filter((step) => step === 'drop-fill');
    expect(drops).toHaveLength(3);
    expect(steps(planned).slice(-6)).toEqual([...FILL, 'rub-out']);
    expect(planned).toMatchObject({ coatsADay: 2, since: new Date(NOW_MS).toISOString() });
    const level = planned.steps.find((step) => step.kind === 'work' && step.task === 'level-sand');
    expect(level).toMatchObject({ place: 'bench', minutes: 30 });
    // Reckoned again: the drops of before are not doubled, and nothing that was planned behind them is kept twice.
    const again = done(await planDrops(open.needs, piece, { drops: 1, aDay: 2 }));
    expect(steps(again).filter((step) => step === 'drop-fill')).toHaveLength(1);
    expect(steps(again).slice(-5)).toEqual(FILL);
  });

  test('are a plan of their own where there was none', async () => {
    const { open, piece } = await aBoxAndAJar();
    const planned = done(await planDrops(open.needs, piece, { drops: 1, aDay: 3 }));
    expect(steps(planned).slice(-5)).toEqual(FILL);
    expect(new Set(planned.steps.map((step) => step.id)).size).toBe(planned.steps.length);
  });
});

test('holds that are set aside are each written down, up to the first that is refused', async () => {
  const { open, piece } = await aBoxAndAJar();
  const said = { piece, act: 'coat', reason: 'Only the hidden edge, the rest is hard.' } as const;
  const holds = [{ rule: 'film-prints' }, { rule: 'base-lifts' }];
  expect(await overrideHolds(open.needs, said, holds)).toEqual({ ok: true, value: undefined });
  expect(open.shop.value.overrides.get(piece)?.map(({ rule }) => rule)).toEqual([
    'film-prints',
    'base-lifts',
  ]);
  expect(await overrideHolds(open.needs, { ...said, piece: id(0xee) }, holds)).toMatchObject({ ok: false });
});

test('a place keeps its id when it is said anew, and a new one gets one', async () => {
  const { open, piece } = await aBoxAndAJar();
  const said = { piece, name: 'Lid', is: 'chip' } as const;
  const { zoneId } = done(await describeZone(open.needs, said));
  expect(done(await describeZone(open.needs, { ...said, zoneId, name: 'Lid, left' })).zoneId).toBe(zoneId);
  expect(done(await describeZone(open.needs, said)).zoneId).not.toBe(zoneId);
});
