import { id } from '../entries';
import { edge, numbered, second, shipped, times, typed } from './edge';

// What is still taken, and what no longer is. Limits are judgement, no source.

const corner = [0.5, 0.5];
const hex = { as: 'hex', hex: 'fff' };
const spectrum = (bands: number, stepNm: number) => [
  { as: 'spectrum', startNm: 400, stepNm, reflectance: times(bands, 0.5) },
];
const photo = (L: number, a: number, b = 0, spread = 0) => [
  { as: 'photo', against: 'chart', L, a, b, spread },
];

edge(
  'tinters',
  shipped('match-described'),
  'tinters',
  [[], numbered(12, (n) => ({ ingredient: id(n) }))],
  [numbered(13, (n) => ({ ingredient: id(n) })), times(2, { ingredient: id(1) })],
);
edge(
  'what was added',
  shipped('trial-mixed'),
  'added',
  [[], times(40, { ingredient: id(1), form: 'neat', mass: typed('1', 'g') })],
  [times(41, { ingredient: id(1), form: 'neat', mass: typed('1', 'g') })],
);
edge('readings', shipped('colour-read'), 'readings', [[hex], times(100, hex)], [[], times(101, hex)]);
edge(
  'a spectrum',
  shipped('colour-read'),
  'readings',
  [spectrum(2, 1), spectrum(500, 1)],
  [spectrum(1, 1), spectrum(501, 1)],
  'readings.0.reflectance',
);
edge(
  'the step of a spectrum',
  shipped('colour-read'),
  'readings',
  [spectrum(2, 1)],
  [spectrum(2, 0.9), spectrum(2, Number.POSITIVE_INFINITY)],
  'readings.0.stepNm',
);
edge(
  'the light of a patch',
  shipped('colour-read'),
  'readings',
  [photo(0, 0), photo(100, 0)],
  [photo(-1, 0), photo(101, 0)],
  'readings.0.L',
);
edge(
  'the red of a patch',
  shipped('colour-read'),
  'readings',
  [photo(50, -128), photo(50, 128)],
  [photo(50, -129), photo(50, 129)],
  'readings.0.a',
);
edge(
  'the spread of a patch',
  shipped('colour-read'),
  'readings',
  [photo(50, 0, 0, 0)],
  [photo(50, 0, 0, -0.1)],
  'readings.0.spread',
);
edge(
  'passes of a toner',
  second('colour-read'),
  'of',
  [{ as: 'on-piece' }, { as: 'on-piece', passes: 0.5 }, { as: 'target' }],
  [{ as: 'on-piece', passes: 0 }],
  'of.passes',
);
edge(
  'an outline',
  shipped('zone-drawn'),
  'outline',
  [times(3, corner), times(300, corner)],
  [times(2, corner), times(301, corner)],
);
edge(
  'a corner',
  shipped('zone-drawn'),
  'outline',
  [
    [
      [0, 0],
      [1, 0],
      [1, 1],
    ],
  ],
  [
    [
      [0, 0],
      [1, 0],
      [1, -0.1],
    ],
    [
      [0, 0],
      [1, 0],
      [1, 1.1],
    ],
  ],
  'outline.2.1',
);
edge(
  'the marks of two photos',
  shipped('photos-aligned'),
  'marks',
  [{ under: times(2, corner), over: times(2, corner) }],
  [{ under: times(1, corner), over: times(2, corner) }],
  'marks.under.1',
);
edge('a side of a photo', shipped('photographed'), 'width', [1, 20_000], [0, 20_001]);
edge(
  'where a photo is from',
  shipped('photographed'),
  'original',
  ['0'.repeat(64)],
  ['0'.repeat(63), 'x'.repeat(64)],
);
edge('layers', second('old-finish-seen'), 'layers', [1, 20], [0, 21]);
edge('the year it was made', second('old-finish-seen'), 'madeAbout', [1400, 2100], [1399, 2101]);
edge(
  'signs of an old finish',
  shipped('old-finish-seen'),
  'signs',
  [[], ['polish', 'crazed']],
  [['shine']],
  'signs.0',
);
edge(
  'a reason',
  shipped('hold-overridden'),
  'reason',
  ['x'.repeat(10), 'x'.repeat(10_000)],
  ['x'.repeat(9), `${'x'.repeat(9)}     `, 'x'.repeat(10_001)],
);
edge('faces of a card', shipped('card-made'), 'faces', [1, 2], [0, 3]);
