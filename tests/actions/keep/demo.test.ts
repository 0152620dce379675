import 'fake-indexeddb/auto';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { drawDemoPhotos, dropDemoPhotos } from '../../../src/actions/keep/demo-photos';
import { openPhotos } from '../../../src/logbook/storage/photos';
import { fail } from '../../../src/result';
import { DEMO_PHOTO } from '../../../src/shop/demo/chip';
import { aShop, done, newName, storeOn } from '../a-shop';

/** What a pen was told to draw, with the colour that it then had. */
type Stroke = readonly [does: string, colour: unknown, ...figures: number[]];
let drawings: Stroke[][] = [];

/** A canvas that notes what is drawn; its picture is the list of it. */
function aCanvas({ hasPen = true, hasPicture = true } = {}) {
  const drawn: Stroke[] = [];
  drawings.push(drawn);
  const pen: Record<string, unknown> = {};
  const notes =
    (does: string, colour: string) =>
    (...figures: number[]) =>
      void drawn.push([does, pen[colour], ...figures]);
  for (const does of ['fillRect', 'fill']) pen[does] = notes(does, 'fillStyle');
  for (const does of ['moveTo', 'bezierCurveTo', 'lineTo', 'stroke']) pen[does] = notes(does, 'strokeStyle');
  for (const does of ['beginPath', 'closePath']) pen[does] = notes(does, 'none');
  return {
    getContext: () => (hasPen ? pen : null),
    toBlob: (take: (blob: Blob | null) => void, type: string) =>
      take(hasPicture ? new Blob([JSON.stringify(drawn)], { type }) : null),
  };
}
const canvases = (can: Parameters<typeof aCanvas>[0] = {}): void => {
  drawings = [];
  vi.stubGlobal('document', { createElement: () => aCanvas(can) });
};
afterEach(() => void vi.unstubAllGlobals());

const demo = async () => {
  const open = await aShop({ store: storeOn(newName()) }, 'demo');
  const entries = [...open.shop.value.entries.values()];
  const ids = entries.flatMap((entry) => (entry.kind === 'photographed' ? [entry.photo] : []));
  return { open, entries, ids };
};
const keptOf = async (ids: readonly string[]) => {
  const all = await openPhotos().ids();
  return ids.filter((id) => all.has(id));
};

describe('the pictures of the demo', () => {
  test('are one a photo, kept as photos are, and taken away with it', async () => {
    canvases();
    const { open, ids } = await demo();
    expect(ids.length).toBeGreaterThan(2);
    await vi.waitFor(async () => expect(await keptOf(ids)).toEqual(ids));
    expect((await openPhotos().read(ids[0] as string))?.type).toBe('image/jpeg');
    done(await open.leave());
    expect(await keptOf(ids)).toEqual([]);
  });

  test('show the same chip on the same grain, each lamp in colours of its own', async () => {
    canvases();
    const { entries, ids } = await demo();
    await vi.waitFor(async () => expect(await keptOf(ids)).toEqual(ids));
    canvases();
    await drawDemoPhotos(entries);
    const { width, height } = DEMO_PHOTO;
    for (const drawn of drawings) {
      const of = (does: string) => drawn.filter(([one]) => one === does);
      expect(of('fillRect').map(([, , ...box]) => box)).toEqual([[0, 0, width, height]]);
      const grain = of('moveTo').map(([, , x, y]) => [x, y as number] as const);
      const gaps = grain.slice(1).map(([, y], i) => y - (grain[i]?.[1] ?? 0));
      expect(grain.every(([x]) => x === 0)).toBe(true);
      for (const gap of gaps) expect(gap).toBeCloseTo(height / grain.length, 6); // evenly over the whole height
      expect(grain[0]?.[1]).toBeCloseTo(height - (grain.at(-1)?.[1] ?? 0), 6);
      for (const [i, [, , x1 = 0, y1 = 0, x2 = 0, y2 = 0, toX, toY]] of of('bezierCurveTo').entries()) {
        expect([toX, toY]).toEqual([width, grain[i]?.[1]]); // from side to side, a little bent between
        expect([0 < x1, x1 < x2, x2 < width]).toEqual([true, true, true]);
        for (const y of [y1, y2]) expect(Math.abs(y - (toY ?? 0))).toBeLessThanOrEqual(16);
      }
      const chip = of('lineTo');
      expect(chip).toHaveLength(6);
      for (const [, , x, y] of chip) {
        expect(x).toBeGreaterThan(0.35 * width);
        expect(x).toBeLessThan(0.65 * width);
        expect(y).toBeGreaterThan(0.4 * height);
        expect(y).toBeLessThan(0.6 * height);
      }
      const colours = new Set(
        [...of('fillRect'), ...of('fill'), ...of('stroke')].map(([, colour]) => colour),
      );
      expect(colours.size).toBe(4); // finish, grain, chip, and the light along its edge
    }
    expect(new Set(drawings.map((drawn) => JSON.stringify(drawn.map(([, colour]) => colour)))).size).toBe(
      drawings.length,
    );
  });

  test.each([{ hasPen: false }, { hasPicture: false }])(
    'are left out where the browser draws none (%o), and the demo goes without',
    async (can) => {
      canvases(can);
      const { open, entries, ids } = await demo();
      await expect(drawDemoPhotos(entries)).rejects.toThrow(DOMException);
      expect(open.failure.value).toBeUndefined();
      expect(open.shop.value.pieces.size).toBe(4);
      expect(await keptOf(ids)).toEqual([]);
      await dropDemoPhotos(entries);
    },
  );
});

describe('a demo on a device that refuses', () => {
  test('to keep it says so', async () => {
    const store = { ...storeOn(newName()), keep: async () => fail({ kind: 'full' } as const) };
    const open = await aShop({ store }, 'demo');
    expect(open.failure.value).toEqual({ kind: 'full' });
  });

  test('to empty it says so in a sentence', async () => {
    canvases();
    const store = { ...storeOn(newName()), empty: async () => fail({ kind: 'no-answer' } as const) };
    const open = await aShop({ store }, 'demo');
    const left = await open.leave();
    expect(left).toMatchObject({ ok: false, failure: { sentence: expect.stringMatching(/\.$/) } });
  });
});
