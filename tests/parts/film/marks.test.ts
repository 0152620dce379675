import { expect, test } from 'vitest';
import type { Piece } from '../../../src/logbook/fold/piece/pieces';
import { filmMarks } from '../../../src/parts/film/film-marks';
import { stackBands } from '../../../src/parts/film/film-picture';
import { spacedNames } from '../../../src/parts/film/film-scale';

const layer = (key: string) => ({ key, label: key, dryUm: 20, solventUm: 0 });
const coat = (id: string, atMs: number, how = 'spray') => ({ id, atMs, how });
const sanding = (id: string, atMs: number, stage: string, um: number) => ({
  id,
  atMs,
  stage,
  removed: { si: um * 1e-6 },
});
/** Two coats and a scuff between them, then a flash coat, a third coat, and a rub-out at the end. */
const WORK = {
  coats: [coat('one', 1), coat('two', 3), coat('wet', 4, 'flash'), coat('three', 5)],
  sandings: [sanding('scuffed', 2, 'scuff', 3), sanding('rubbed', 9, 'rub-out', 2.54)],
} as unknown as Pick<Piece, 'coats' | 'sandings'>;
const LAYERS = ['one', 'two', 'three'].map(layer);

test('each sanding and flash coat lies on the coat that it was done on', () => {
  expect(filmMarks(WORK, LAYERS, 1).map(({ key, above }) => [key, above])).toEqual([
    ['scuffed', 1],
    ['wet', 2],
    ['rubbed', 3],
  ]);
});

test('it is told by its amount in the unit of the ruler', () => {
  expect(filmMarks(WORK, LAYERS, 1).map(({ label }) => label)).toEqual(['−3 scuff', 'flash', '−3 rub']);
  expect(filmMarks(WORK, LAYERS, 25.4).map(({ label }) => label)).toEqual([
    '−0.1 scuff',
    'flash',
    '−0.1 rub',
  ]);
});

test('what lay on a coat that is sanded away lies on what is below it, old finish too', () => {
  const above = filmMarks(WORK, [layer('old-finish'), layer('three')], 1).map((mark) => mark.above);
  expect(above).toEqual([1, 1, 2]);
});

test('beside the film a mark stands above the coat that it was done on, and is named before thin coats are', () => {
  const [foot, perUm] = [228, 1];
  const bands = stackBands(LAYERS, { width: 244, woodTop: foot, perUm });
  const mark = { key: 'm', label: '−3 scuff', at: bands[0]?.top ?? 0 };
  expect(spacedNames(bands, foot, [mark]).map(({ label }) => label)).toEqual([
    'three',
    'two',
    '−3 scuff',
    'one',
  ]);
  const thin = stackBands(
    LAYERS.map((one) => ({ ...one, dryUm: 5 })),
    { width: 244, woodTop: foot, perUm },
  );
  expect(spacedNames(thin, foot, [mark]).map(({ label }) => label)).toContain('−3 scuff');
});
