import type { ReadingSet } from '../../logbook/fold/piece/matches';
import { DEMO_MATCH } from '../../words/demo';
import type { fillDemoJars } from './jars';
import type { Pen } from './pen';
import { bare, grams } from './said';

type Shelf = ReturnType<typeof fillDemoJars>['shelf'];
type Lab = readonly [L: string, a: string, b: string];

/** The lid of the caddy is led to the white of its body: two trials read, the third still a little short. */
export function matchCaddy(pen: Pen, piece: string, shelf: Shelf): void {
  const match = pen.newId();
  const { base, ochre, umber, red } = shelf;
  pen.write(
    {
      kind: 'match-described',
      match,
      name: DEMO_MATCH.name,
      piece,
      place: 'open-panel',
      through: 'bare',
      white: 'D65/10',
      base,
      tinters: [
        { ingredient: ochre, like: 'ochre' },
        { ingredient: umber, like: 'raw umber' },
        { ingredient: red, like: 'red oxide' },
      ],
      division: grams('0.01'),
      letDowns: ['let-down-10', 'let-down-1'],
    },
    pen.daysAgo(3, 8, 30),
  );
  const mix = (added: readonly (readonly [string, string])[], atMs: number): string => {
    const trial = pen.newId();
    const said = added.map(([ingredient, text]) => ({
      ingredient,
      form: 'neat' as const,
      mass: grams(text),
    }));
    pen.write({ kind: 'trial-mixed', match, trial, added: said }, atMs);
    return trial;
  };
  const read = (
    of: ReadingSet['of'] & { as: 'target' | 'trial' },
    labs: readonly Lab[],
    atMs: number,
  ): void => {
    const readings = labs.map(([L, a, b]) => ({ as: 'lab' as const, L: bare(L), a: bare(a), b: bare(b) }));
    pen.write({ kind: 'colour-read', match, of, white: 'D65/10', isDry: true, readings }, atMs);
  };
  read({ as: 'target' }, TARGET, pen.daysAgo(3, 8, 40));
  const untinted = mix([[base, '150']], pen.daysAgo(3, 9));
  read({ as: 'trial', trial: untinted }, UNTINTED, pen.daysAgo(2, 9));
  const second = mix(
    [
      [ochre, '1.2'],
      [umber, '0.2'],
    ],
    pen.daysAgo(2, 9, 30),
  );
  read({ as: 'trial', trial: second }, SECOND, pen.daysAgo(2, 15));
  const third = mix(
    [
      [ochre, '0.5'],
      [umber, '0.2'],
    ],
    pen.daysAgo(2, 15, 30),
  );
  read({ as: 'trial', trial: third }, THIRD, pen.daysAgo(1, 9));
}

const TARGET: readonly Lab[] = [
  ['90.4', '-0.4', '9.6'],
  ['90.6', '-0.3', '9.4'],
  ['90.5', '-0.4', '9.5'],
];
const UNTINTED: readonly Lab[] = [
  ['95.8', '-0.9', '2.6'],
  ['95.9', '-0.9', '2.5'],
  ['95.7', '-0.8', '2.6'],
];
const SECOND: readonly Lab[] = [
  ['92.6', '-0.6', '7.4'],
  ['92.5', '-0.6', '7.3'],
  ['92.6', '-0.7', '7.4'],
];
const THIRD: readonly Lab[] = [
  ['91.1', '-0.5', '8.6'],
  ['91.2', '-0.5', '8.7'],
  ['91.1', '-0.4', '8.6'],
];
