import 'fake-indexeddb/auto';
import { describe, expect, test } from 'vitest';
import { fillJar } from '../../../src/actions/jar';
import { boxJars } from '../../../src/actions/mix/box-jars';
import { jarAmount } from '../../../src/shop/jar/amount';
import { jarFilm } from '../../../src/shop/jar/film';
import { aShop, done } from '../a-shop';

const typed = <Unit extends string>(text: string, unit: Unit) => ({ text, unit }) as const;
const jarOf = (
  name: string,
  solids: string,
  amount: string | undefined,
  solvent: string,
  finish = 'nitrocellulose',
) =>
  ({
    name,
    product: {
      finish: finish as 'nitrocellulose',
      volumeSolids: typed(solids, '%'),
      solvents: [{ solvent, share: 1 }],
    },
    thinner: { name: 'None', blend: [{ solvent, share: 1 }] },
    thinning: { of: 'mix', percent: typed('0', '%') },
    ...(amount === undefined ? {} : { amount: typed(amount, 'mL') }),
    density: typed('1', 'g/mL'),
  }) as const;

async function two(one: ReturnType<typeof jarOf>, other: ReturnType<typeof jarOf>) {
  const open = await aShop();
  const ids = [done(await fillJar(open.needs, one)).jar, done(await fillJar(open.needs, other)).jar] as const;
  const get = (id: string) => {
    const jar = open.shop.value.jars.get(id);
    if (!jar) throw new Error('no jar');
    return jar;
  };
  return { open, get, ids, box: () => boxJars(open.needs, get(ids[0]), get(ids[1])) };
}

describe('boxing two jars', () => {
  test('pours all of both into one: volume, solids and solvents are conserved, and both are empty', async () => {
    const { open, get, ids, box } = await two(
      jarOf('Old', '20', '100', 'toluene'),
      jarOf('New', '30', '300', 'acetone'),
    );
    const boxed = get(done(await box()).jar);
    // By hand: (20 + 90) mL solids in 400 mL; 80 mL toluene beside 210 mL acetone
    const film = jarFilm(boxed);
    expect(boxed.amount?.si).toBeCloseTo(400e-6, 9);
    expect(film.volumeSolids).toBeCloseTo(110 / 400, 6);
    expect(film.solvents.find(({ id }) => id === 'toluene')?.share).toBeCloseTo(80 / 290, 6);
    for (const id of ids) expect(jarAmount(get(id), open.shop.value).leftM3).toBeCloseTo(0, 9);
  });

  test('has the density and the pigment of both, in flakes where either has them', async () => {
    const white = (shareOfSolids: string, shape: 'grains' | 'flakes') => ({
      pigment: { shareOfSolids: typed(shareOfSolids, '%'), shape },
      contains: ['acid'] as const,
    });
    const one = { ...jarOf('A', '20', '100', 'toluene'), ...white('30', 'grains') };
    const heavy = { ...jarOf('B', '10', '300', 'toluene'), density: typed('1.2', 'g/mL') };
    const mixed = await two(one as never, heavy as never);
    const boxed = mixed.get(done(await mixed.box()).jar);
    // By hand: (100 + 360) g in 400 mL; 20 mL of solids with 6 mL of pigment beside 30 mL with none.
    expect(boxed.density?.si).toBeCloseTo(1150, 6);
    expect(boxed.pigment?.shareOfSolids.si).toBeCloseTo(6 / 50, 6);
    expect(boxed.pigment?.shape).toBe('grains');
    expect(boxed.contains).toEqual(['acid']);
    expect(boxed.boxedFrom?.map(({ volume }) => volume.si)).toEqual([
      expect.closeTo(100e-6, 12),
      expect.closeTo(300e-6, 12),
    ]);
    const flaked = await two(one as never, { ...heavy, ...white('5', 'flakes') } as never);
    expect(flaked.get(done(await flaked.box()).jar)).toMatchObject({
      pigment: { shape: 'flakes' },
      contains: ['acid'],
    });
    const clear = await two(jarOf('A', '20', '100', 'toluene'), jarOf('B', '20', '100', 'toluene'));
    const plain = clear.get(done(await clear.box()).jar);
    for (const key of ['pigment', 'contains', 'life']) expect(plain).not.toHaveProperty(key);
  });

  test('that is all but over keeps for minutes, and never for less than nothing', async () => {
    const over = {
      ...jarOf('A', '20', '100', 'toluene'),
      life: { span: typed('1', 'h'), as: 'pot' },
      mixedOn: '2026-01-01',
    };
    const { get, box } = await two(over as never, jarOf('B', '20', '100', 'toluene'));
    expect(get(done(await box()).jar).life?.span.typed).toEqual({ text: '0.1', unit: 'h' });
  });

  test('keeps as long as the one that ends first, whichever was poured first', async () => {
    const living = (name: string, hours: string) =>
      ({
        ...jarOf(name, '20', '100', 'toluene'),
        life: { span: typed(hours, 'h'), as: 'pot' },
      }) as const;
    for (const hours of [
      ['8', '24'],
      ['24', '8'],
    ] as const) {
      const { get, box } = await two(living('A', hours[0]), living('B', hours[1]));
      expect(get(done(await box()).jar).life?.span.si).toBeCloseTo(8 * 3600, -2);
    }
  });

  test('of two kinds of finish, or of unknown amounts, is refused in a sentence', async () => {
    const kinds = await two(
      jarOf('A', '20', '100', 'toluene'),
      jarOf('B', '20', '100', 'water', 'waterborne'),
    );
    expect(await kinds.box()).toMatchObject({
      ok: false,
      failure: { sentence: expect.stringContaining('kinds of finish') },
    });
    const unknown = await two(jarOf('A', '20', '100', 'toluene'), jarOf('B', '20', undefined, 'toluene'));
    expect(await unknown.box()).toMatchObject({
      ok: false,
      failure: { sentence: expect.stringContaining('How much is left') },
    });
    expect(unknown.open.shop.value.jars.size).toBe(2);
  });
});
