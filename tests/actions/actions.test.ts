import 'fake-indexeddb/auto';
import { describe, expect, test, vi } from 'vitest';
import type { OpenShop } from '../../src/actions/shop';
import { aShop, done, NOW_MS, newName, storeOn } from './a-shop';
import { BackupWorker } from './backup-worker';

vi.stubGlobal('Worker', BackupWorker);

const MINUTE_MS = 60_000;
const um = (text: string) => ({ text, unit: 'um' }) as const;
const percent = (text: string) => ({ text, unit: '%' }) as const;
const JAR = {
  name: 'Gloss',
  product: { finish: 'nitrocellulose', volumeSolids: percent('22') },
  thinner: { name: 'Thinner', blend: [{ solvent: 'toluene', share: 1 }] },
  thinning: { of: 'lacquer', percent: percent('50') },
} as const;

async function bench(open: OpenShop) {
  const { piece } = done(
    await open.actions.startPiece({ name: 'Box', base: 'sealed' }, NOW_MS - 90 * MINUTE_MS),
  );
  const { jar } = done(await open.actions.fillJar(JAR, NOW_MS - 80 * MINUTE_MS));
  const coat = { piece, jar, how: 'spray', film: { by: 'wet', wetFilm: um('85') } } as const;
  return { piece, jar, coat };
}
/** The shop as data, without what is only an index of it. */
const stateOf = ({ shop }: OpenShop) => structuredClone({ ...shop.value });

describe('what was done', () => {
  test('is there again when the app is killed and opened', async () => {
    const name = newName();
    const open = await aShop({ store: storeOn(name) });
    const { piece, coat, jar } = await bench(open);
    done(await open.actions.layCoat(coat, NOW_MS - 60 * MINUTE_MS));
    const slip = done(await open.actions.layCoat(coat));
    done(await open.actions.undo(slip.id));
    done(await open.actions.sand({ piece, removed: um('2'), stage: 'scuff' }));
    done(await open.actions.logCheck({ piece, test: 'print', result: 'fails' }));
    done(
      await open.actions.readAir({
        temperature: { text: '21', unit: 'C' },
        humidity: percent('48'),
        movement: 'gentle',
      }),
    );
    done(await open.actions.changePiece({ piece, name: 'Box, lid' }));
    done(await open.actions.changeSettings({ units: 'us' }));
    done(await open.actions.emptyJar(jar));
    const before = stateOf(open);
    open.close();
    const again = await aShop({ store: storeOn(name) });
    expect(stateOf(again)).toEqual(before);
    expect(again.shop.value.pieces.get(piece)).toMatchObject({
      name: 'Box, lid',
      coats: [{ atMs: NOW_MS - 60 * MINUTE_MS }],
    });
  });

  test('can be undone, and the undoing too', async () => {
    const open = await aShop();
    const { piece, coat } = await bench(open);
    const laid = done(await open.actions.layCoat(coat));
    const coats = () => open.shop.value.pieces.get(piece)?.coats.length;
    const strike = done(await open.actions.undo(laid.id));
    expect(coats()).toBe(0);
    done(await open.actions.undo(strike.id));
    expect(coats()).toBe(1);
  });

  test('goes into a backup and out of it into another shop, once', async () => {
    const open = await aShop();
    const { coat } = await bench(open);
    done(await open.actions.layCoat(coat));
    const file = await open.actions.exportBackup();
    expect(file.name).toBe(`coatwait-${new Date(NOW_MS).toLocaleDateString('sv')}.zip`); // Sweden writes a day as ISO 8601 does
    const other = await aShop();
    expect(await other.actions.importBackup(file)).toEqual({
      ok: true,
      value: { entries: 3, unread: 0, photos: 0, photosLeft: 0 },
    });
    expect(stateOf(other)).toEqual(stateOf(open));
    expect(await other.actions.importBackup(file)).toEqual({
      ok: true,
      value: { entries: 0, unread: 0, photos: 0, photosLeft: 0 },
    });
  });
});

describe('a refusal', () => {
  test.each([
    {
      why: 'solids over 100 %',
      act: (open: OpenShop) =>
        open.actions.fillJar({ ...JAR, product: { finish: 'nitrocellulose', volumeSolids: percent('120') } }),
      fields: { 'product.volumeSolids': 'Enter a value from 0.1 to 100 %.' },
    },
    {
      why: 'a thinning that is no number',
      act: (open: OpenShop) =>
        open.actions.fillJar({ ...JAR, thinning: { of: 'mix', percent: percent('half') } }),
      fields: { 'thinning.percent': 'Enter a number, such as 3.5 or 3,5.' },
    },
    {
      why: 'no room for lacquer',
      act: (open: OpenShop) =>
        open.actions.fillJar({
          ...JAR,
          thinning: { of: 'mix', percent: percent('80') },
          retarder: { of: 'mix', solvent: 'pma', percent: percent('30') },
        }),
      fields: { 'thinning.percent': expect.stringContaining('no room for lacquer') },
    },
    {
      why: '-300 C and 140 % RH, each at its field',
      act: (open: OpenShop) =>
        open.actions.readAir({
          temperature: { text: '-300', unit: 'C' },
          humidity: percent('140'),
          movement: 'gentle',
        }),
      fields: {
        temperature: 'Enter a value from \u221220 to 60 °C.',
        humidity: 'Enter a value from 1 to 100 %.',
      },
    },
    {
      why: 'a date in 1970',
      act: (open: OpenShop) => open.actions.startPiece({ name: 'Box', base: 'sealed' }, 0),
      fields: { at: 'Enter a time from the year 2000 on.' },
    },
    {
      why: 'the future',
      act: (open: OpenShop) => open.actions.startPiece({ name: 'Box', base: 'sealed' }, NOW_MS + MINUTE_MS),
      fields: { at: 'Enter a time no later than 10 Mar 2026, 14:00.' },
    },
  ])('of $why stands beside its field, and nothing is kept', async ({ act, fields }) => {
    const open = await aShop();
    const refused = await act(open);
    expect(refused).toMatchObject({ ok: false, failure: { fields, sentence: expect.stringMatching(/\S/) } });
    expect(open.shop.value.entries.size).toBe(0);
  });

  test('of a coat before its piece says from when it could be', async () => {
    const open = await aShop();
    const { coat } = await bench(open);
    expect(await open.actions.layCoat(coat, NOW_MS - 200 * MINUTE_MS)).toMatchObject({
      ok: false,
      failure: {
        fields: {
          at: 'Enter a time from 10 Mar 2026, 12:30, when this was started, to 10 Mar 2026, 14:00. If it was started earlier, correct that entry first.',
        },
      },
    });
  });

  test('of a backup leaves the shop as it was', async () => {
    const open = await aShop();
    await bench(open);
    const before = stateOf(open);
    expect(await open.actions.importBackup(new Blob(['{"entries":[]}']))).toMatchObject({ ok: false });
    expect(stateOf(open)).toEqual(before);
  });
});

test('a logbook that cannot be read says so, and is read when it can', async () => {
  const store = storeOn(newName());
  let isThere = false;
  const flaky = {
    ...store,
    loadAll: async () =>
      isThere ? store.loadAll() : ({ ok: false, failure: { kind: 'no-answer' } } as const),
  };
  const open = await aShop({ store: flaky });
  expect(open.failure.value).toEqual({ kind: 'no-answer' });
  isThere = true;
  await open.reopen();
  expect(open.failure.value).toBeUndefined();
});

test('the clock moves on by itself, and when the page wakes', async () => {
  let nowMs = NOW_MS;
  const calls: (() => void)[] = [];
  const follow = (job: () => void) => {
    calls.push(job);
    return () => undefined;
  };
  const open = await aShop({ now: () => nowMs, every: (_, job) => follow(job), onWake: follow });
  for (const call of calls) {
    nowMs += 20_000;
    call();
    expect(open.nowMs.value).toBe(nowMs);
  }
  expect(calls).toHaveLength(2);
});
