import { expect, test } from 'vitest';
import { requestFor } from '../../../src/actions/outlook/request';
import type { Estimate } from '../../../src/estimator/estimate';
import { answer } from '../../../src/estimator/run/answer';
import type { EntryBody } from '../../../src/logbook/entry';
import { coatsOn, filmLayers, OLD_FINISH } from '../../../src/parts/film/piece-film';
import { DAY_1_MS, layCoat, sand } from '../../logbook/entries';
import { anOutlook, aShop, HOURS } from '../an-outlook';

const um = (value: number): number => value * 1e-6;
const layer = (dry: number, solvent: number) => ({ dryM: um(dry), solventM: um(solvent) });
const look = (hour: number, ...layers: Estimate['profiles'][number]['layers'][number][]) => ({
  timeS: hour * 3600,
  layers,
});
const hoursOn = (hour: number): number => DAY_1_MS + hour * 3_600_000;
const flash: EntryBody = { ...layCoat(), how: 'flash' } as EntryBody;

test('between two looks a coat holds its share of what it loses', () => {
  const { piece, shop } = aShop({ hour: 0, body: layCoat() });
  const outlook = anOutlook(HOURS, [look(0, layer(12, 60)), look(2, layer(12, 20))]);
  const [coat] = filmLayers(piece, outlook, shop.jars, hoursOn(1));
  expect(coat).toMatchObject({ key: piece.coats[0]?.id, label: 'Coat 1' });
  expect(coat?.dryUm).toBeCloseTo(12, 9);
  expect(coat?.solventUm).toBeCloseTo(40, 9); // half of the way from 60 to 20
});

test('a coat that went on later is not drawn into the looks before it', () => {
  const { piece, shop } = aShop({ hour: 0, body: layCoat() }, { hour: 2, body: layCoat() });
  const outlook = anOutlook(HOURS, [look(1, layer(12, 30)), look(2, layer(12, 20), layer(12, 60))]);
  expect(filmLayers(piece, outlook, shop.jars, hoursOn(1.5))).toHaveLength(1);
  expect(filmLayers(piece, outlook, shop.jars, hoursOn(2)).map(({ label }) => label)).toEqual([
    'Coat 1',
    'Coat 2',
  ]);
});

test('a flash coat is no layer, and the coat after it keeps its number', () => {
  const { piece, shop } = aShop({ hour: 0, body: flash }, { hour: 1, body: layCoat() });
  const outlook = anOutlook(HOURS, [look(1, layer(60, 5), layer(12, 40))]);
  const layers = filmLayers(piece, outlook, shop.jars, hoursOn(1));
  expect(layers.map(({ key, label }) => [key === OLD_FINISH, label])).toEqual([
    [true, 'Old finish'],
    [false, 'Coat 2'],
  ]);
});

test('without an estimate nothing is drawn', () => {
  const { piece, shop } = aShop({ hour: 0, body: layCoat() });
  expect(filmLayers(piece, { state: 'computing' }, shop.jars, hoursOn(1))).toEqual([]);
  expect(filmLayers(piece, anOutlook(), shop.jars, hoursOn(1))).toEqual([]);
});

test('a coat that was sanded away is not drawn under the one that went on after it', () => {
  const gone = { ...sand(), removed: { text: '90', unit: 'um' } } as EntryBody;
  const { piece, shop } = aShop(
    { hour: 0, body: layCoat() },
    { hour: 24, body: gone },
    { hour: 25, body: layCoat() },
  );
  const asked = requestFor(piece, shop, hoursOn(26));
  const worked = asked.ok ? answer({ ...asked.value.request, whatIf: [] }) : undefined;
  if (!asked.ok || !worked?.ok) throw new Error('It was not worked out.');
  const { estimate } = worked;
  const outlook = { state: 'ready', estimate, startMs: asked.value.startMs, stale: false } as const;
  const layers = filmLayers(piece, outlook, shop.jars, hoursOn(26));
  expect(layers.map(({ label }) => label)).toEqual(['Coat 2']);
  expect(coatsOn(piece, outlook, layers)).toBe(1);
  expect(coatsOn(piece, { state: 'computing' }, [])).toBe(2); // as logged, until it is known
  expect(coatsOn(piece, { state: 'no-coats' }, [])).toBe(0);
});
