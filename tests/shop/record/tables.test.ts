import 'fake-indexeddb/auto';
import { parse } from 'csv-parse/sync';
import { expect, test } from 'vitest';
import { layCoat } from '../../../src/actions/coat';
import { fillJar } from '../../../src/actions/jar';
import { describeMatch } from '../../../src/actions/match/describe-match';
import { mixTrial } from '../../../src/actions/match/mix-trial';
import { readColour } from '../../../src/actions/match/read-colour';
import { startPiece } from '../../../src/actions/piece';
import type { OpenShop } from '../../../src/actions/shop';
import { describeZone } from '../../../src/actions/zone/describe-zone';
import { fold } from '../../../src/logbook/fold/fold';
import { csvText } from '../../../src/shop/record/csv';
import { type TableName, tableOf } from '../../../src/shop/record/tables';
import { aShop, done } from '../../actions/a-shop';

/** The rows of a table as a reference library reads its file, each by the heads of its columns; one of another length is refused. */
function rowsOf(name: TableName, { shop }: OpenShop): Readonly<Record<string, string | undefined>>[] {
  return parse(csvText(tableOf(name, shop.value)), { bom: true, columns: true });
}

const ratio = (text: string) => ({ text, unit: 'ratio' }) as const;
const percent = (text: string) => ({ text, unit: '%' }) as const;

async function aCabinet(open: OpenShop, atMs?: number): Promise<string> {
  const started = await startPiece(open.needs, { name: 'Cabinet', base: 'sealed' }, atMs);
  return done(started).piece;
}

test('a coat tells the local day and time beside UTC, its product, and its dry film', async () => {
  const open = await aShop({ zone: () => 'America/New_York' });
  const begunMs = Date.parse('2026-03-07T12:00:00Z');
  const piece = await aCabinet(open, begunMs);
  const { jar } = done(
    await fillJar(
      open.needs,
      {
        name: 'White',
        product: { finish: 'nitrocellulose', volumeSolids: percent('25') },
        thinner: { name: 'Thinner', blend: [{ solvent: 'acetone', share: 1 }] },
        thinning: { of: 'lacquer', percent: percent('0') },
      },
      begunMs,
    ),
  );
  const film = { by: 'wet', wetFilm: { text: '100', unit: 'um' } } as const;
  // The clocks of New York go from UTC-5 to UTC-4 on 8 March 2026 at 07:00 UTC (IANA tz database).
  for (const at of ['2026-03-08T02:30:00Z', '2026-03-08T18:30:15Z'])
    done(await layCoat(open.needs, { piece, jar, how: 'spray', film }, Date.parse(at)));
  const [before, after] = rowsOf('coats', open);
  expect(before).toMatchObject({
    'Time (UTC)': '2026-03-08T02:30:00.000Z',
    Date: '2026-03-07',
    'Local time': '21:30:00',
    'Time zone': 'America/New_York',
    Piece: 'Cabinet',
    Jar: 'White',
    Product: 'Nitrocellulose',
    'Dry film, µm': '25.0', // 100 um x 25 %
  });
  expect(after).toMatchObject({ Date: '2026-03-08', 'Local time': '14:30:15', Coat: '2' });
  expect(before?.['Entry']).not.toBe(after?.['Entry']);
});

test('a coat tells its film in the way it was said', async () => {
  const open = await aShop();
  const piece = await aCabinet(open);
  const { jar } = done(
    await fillJar(open.needs, {
      name: 'White',
      product: { finish: 'nitrocellulose', volumeSolids: percent('25') },
      thinner: { name: 'Thinner', blend: [{ solvent: 'acetone', share: 1 }] },
      thinning: { of: 'lacquer', percent: percent('0') },
    }),
  );
  const um = (text: string) => ({ text, unit: 'um' }) as const;
  for (const film of [
    { by: 'wet', wetFilm: um('100') },
    { by: 'passes', passes: 3, perPass: um('12') },
    { by: 'usual', dryFilm: um('20') },
  ] as const)
    done(await layCoat(open.needs, { piece, jar, how: 'spray', film }));
  const heads = ['Film by', 'Film', 'Film unit', 'Passes', 'Dry film, µm'];
  expect(rowsOf('coats', open).map((row) => heads.map((head) => row[head]))).toEqual([
    ['wet', '100', 'um', '', '25.0'],
    ['passes', '12', 'um', '3', '9.0'], // 3 x 12 um x 25 %
    ['usual', '20', 'um', '', '20.0'],
  ]);
});

test('a coat on a place tells the place; one of the whole piece tells none', async () => {
  const open = await aShop();
  const piece = await aCabinet(open);
  const { jar } = done(
    await fillJar(open.needs, {
      name: 'White',
      product: { finish: 'nitrocellulose', volumeSolids: percent('25') },
      thinner: { name: 'Thinner', blend: [{ solvent: 'acetone', share: 1 }] },
      thinning: { of: 'lacquer', percent: percent('0') },
    }),
  );
  const side = { text: '40', unit: 'mm' } as const;
  const said = { piece, is: 'colour-loss', length: side, width: side } as const;
  const { zoneId } = done(await describeZone(open.needs, { ...said, name: 'Door' }));
  done(await describeZone(open.needs, { ...said, name: 'Lid' }));
  const coat = {
    piece,
    jar,
    how: 'spray',
    film: { by: 'wet', wetFilm: { text: '100', unit: 'um' } },
  } as const;
  done(await layCoat(open.needs, coat));
  done(await layCoat(open.needs, { ...coat, zoneId }));
  expect(rowsOf('coats', open).map((row) => [row['Place'], row['Coat']])).toEqual([
    ['', '1'],
    ['Door', '2'],
  ]);
});

test('a reading tells its piece, trial, clear coats and whether it was dry; no two rows are alike', async () => {
  const open = await aShop();
  const piece = await aCabinet(open);
  const { match } = done(
    await describeMatch(open.needs, {
      name: 'Cream',
      piece: { piece },
      place: 'edge',
      through: 'clear',
      white: 'D65/10',
      base: { name: 'White' },
      tinters: [{ name: 'Ochre', like: 'ochre' }],
      division: { text: '0.01', unit: 'g' },
      letDowns: [],
    }),
  );
  const { base, tinters } = open.shop.value.matches.get(match) ?? { base: '', tinters: [] };
  const mass = { text: '200', unit: 'g' } as const;
  const { trial } = done(
    await mixTrial(open.needs, { match, added: [{ ingredient: base, form: 'neat', mass }] }),
  );
  const lab = { as: 'lab', L: ratio('95.5'), a: ratio('-0.8'), b: ratio('2.2') } as const;
  const said = { match, white: 'D65/10', isDry: true, readings: [lab, lab] } as const;
  done(await readColour(open.needs, { ...said, of: { as: 'target' } }));
  done(await readColour(open.needs, { ...said, of: { as: 'trial', trial } }));
  done(await readColour(open.needs, { ...said, of: { as: 'trial', trial }, clearCoats: 4, isDry: false }));
  const tinter = tinters[0]?.ingredient ?? '';
  done(await readColour(open.needs, { ...said, of: { as: 'tint', tinter, share: percent('5') } }));
  const rows = rowsOf('readings', open);
  const short = rows.map((row) =>
    ['Of', 'Which', 'Reading', 'Under', 'Coats of clear', 'Film'].map((head) => row[head]),
  );
  expect(short).toEqual([
    ['target', '', '1', 'clear', '', 'dry'],
    ['target', '', '2', 'clear', '', 'dry'],
    ['tint', 'Ochre 5 %', '1', 'bare', '0', 'dry'],
    ['tint', 'Ochre 5 %', '2', 'bare', '0', 'dry'],
    ['trial', '1', '1', 'bare', '0', 'dry'],
    ['trial', '1', '2', 'bare', '0', 'dry'],
    ['trial', '1', '1', 'clear', '4', 'wet'],
    ['trial', '1', '2', 'clear', '4', 'wet'],
  ]);
  expect(new Set(rows.map((row) => JSON.stringify(row))).size).toBe(rows.length);
  expect(rows[0]).toMatchObject({
    Match: 'Cream',
    Piece: 'Cabinet',
    'L*': '95.50',
    'a*': '-0.80',
    'b*': '2.20',
  });
});

test.each([
  { name: 'coats', beside: ['Coat', 'Piece', 'Jar', 'Product', 'Film', 'Film unit', 'Dry film, µm'] },
  { name: 'recipes', beside: ['Recipe', 'Version', 'Line', 'Ingredient', 'Amount', 'Unit'] },
  { name: 'readings', beside: ['Match', 'Piece', 'Which', 'Reading', 'Under', 'Coats of clear', 'Film'] },
] as const)(
  'the table of $name has the local day and clock in columns of their own, and no two alike',
  ({ name, beside }) => {
    const [heads = []] = parse(csvText(tableOf(name, fold([]))), { bom: true }) as string[][];
    for (const head of ['Entry', 'Time (UTC)', 'Date', 'Local time', 'Time zone', ...beside])
      expect(heads).toContain(head);
    expect(new Set(heads).size).toBe(heads.length);
  },
);

test('a name with a comma, a quote and a line break, and one that looks like a formula, come back whole', async () => {
  const open = await aShop();
  const names = ['Chest, "old"\nlower half', '=SUM(A1)'];
  for (const name of names) {
    const { piece } = done(await startPiece(open.needs, { name, base: 'sealed' }));
    const { jar } = done(
      await fillJar(open.needs, {
        name,
        product: { finish: 'nitrocellulose', volumeSolids: percent('25') },
        thinner: { name: 'Thinner', blend: [{ solvent: 'acetone', share: 1 }] },
        thinning: { of: 'lacquer', percent: percent('0') },
      }),
    );
    const film = { by: 'wet', wetFilm: { text: '100', unit: 'um' } } as const;
    done(await layCoat(open.needs, { piece, jar, how: 'spray', film }));
  }
  expect(rowsOf('coats', open).map((row) => row['Piece'])).toEqual([names[0], `'${names[1]}`]);
});
