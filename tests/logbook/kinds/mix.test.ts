import { id } from '../entries';
import { edge, numbered, second, shipped, times, typed } from './edge';

// What is still taken, and what no longer is. Limits are judgement, no source.

const jar = shipped('jar-filled');
const line = { ingredient: id(0xc1), amount: typed('3', 'g') };
const passes = (count: number) => ({ by: 'passes', passes: count, perPass: typed('12', 'um') });
const thinner = (...blend: unknown[]) => ({ name: 'x', blend });

edge('passes', shipped('coat-laid'), 'film', [passes(1), passes(50)], [passes(51)], 'film.passes');
edge(
  'half passes',
  second('coat-laid'),
  'film',
  [passes(0.5), passes(50)],
  [passes(0), passes(0.25), passes(50.5)],
  'film.passes',
);
edge(
  'shares of a blend',
  jar,
  'thinner',
  [
    thinner({ solvent: 'acetone', share: 0.9951 }),
    thinner(...numbered(20, (n) => ({ solvent: `s${n}`, share: 0.05 }))),
    thinner({ solvent: 'acetone', share: 0.5 }, { solvent: 'mek', share: 0.5049 }),
  ],
  [
    thinner({ solvent: 'acetone', share: 0.9949 }),
    thinner(...numbered(21, (n) => ({ solvent: `s${n}`, share: 1 / 21 }))),
    thinner({ solvent: 'acetone', share: 0.5 }, { solvent: 'mek', share: 0.5051 }),
  ],
  'thinner.blend',
);
edge(
  'a share',
  jar,
  'thinner',
  [thinner({ solvent: 'acetone', share: 1 })],
  [thinner({ solvent: 'acetone', share: 1 }, { solvent: 'mek', share: 0 })],
  'thinner.blend.1.share',
);
edge(
  'a day',
  second('jar-filled'),
  'mixedOn',
  ['2026-02-28', '2024-02-29'],
  ['2026-02-29', '2026-2-28', 'yesterday', '2026-02-28T00:00:00Z'],
);
edge(
  'what a let-down is made of',
  shipped('ingredient-described'),
  'madeOf',
  [times(1, { ingredient: id(2), massFraction: 1 }), times(40, { ingredient: id(2), massFraction: 0.025 })],
  [[], times(41, { ingredient: id(2), massFraction: 0.02 })],
);
edge('a tracer', second('ingredient-described'), 'tracerNm', [200, 420], [199, 421, 300.5]);
edge(
  'lines of a recipe',
  shipped('recipe-written'),
  'lines',
  [times(1, line), times(40, line)],
  [[], times(41, line)],
);
edge(
  'an amount',
  shipped('recipe-written'),
  'lines',
  [[{ ...line, amount: typed('0,001', 'g') }], [{ ...line, amount: typed('1000000', 'drops') }]],
  [
    [{ ...line, amount: typed('0', 'g') }],
    [{ ...line, amount: typed('-1', 'g') }],
    [{ ...line, amount: typed('some', 'g') }],
    [{ ...line, amount: typed('1000001', 'g') }],
  ],
  'lines.0.amount.text',
);
edge(
  'of what, by mass or volume',
  shipped('recipe-written'),
  'lines',
  [
    [{ ...line, amount: typed('3', '%'), by: 'mass', of: 'mix' }],
    [{ ...line, amount: typed('3', 'parts'), by: 'mass' }],
  ],
  [
    [{ ...line, amount: typed('3', '%'), by: 'mass' }],
    [{ ...line, amount: typed('3', '%'), of: 'mix' }],
    [{ ...line, amount: typed('3', 'parts') }],
  ],
  'lines.0',
);
edge(
  'a plan to be poured',
  shipped('weigh-up-begun'),
  'plan',
  [times(40, { ingredient: id(1), massKg: 0.1 })],
  [[], times(41, { ingredient: id(1), massKg: 0.1 })],
);
edge('a line of it', shipped('poured'), 'line', [0, 39], [-1, 0.5, 40]);
edge('a correction', shipped('corrected'), 'to', [{ how: 'pad' }], [{}]);
edge(
  'times of a sheet',
  shipped('sheet-entered'),
  'times',
  [
    {},
    { recoatFrom: typed('1', 'h') },
    { recoatUntil: typed('1', 'h') },
    { recoatFrom: typed('59', 'min'), recoatUntil: typed('1', 'h') },
  ],
  [{ recoatFrom: typed('60', 'min'), recoatUntil: typed('1', 'h') }],
  'times.recoatUntil',
);
