import { expect, test } from 'vitest';
import { hidingOf } from '../../../src/shop/colour/hides';

const bare = (text: string) => ({ text, unit: 'ratio' }) as const;
const drawdown = (
  as: 'Y' | 'L',
  [blackCard, black, whiteCard, white]: readonly [string, string, string, string],
) =>
  hidingOf({
    dryFilm: { text: '25', unit: 'um' },
    in: as,
    black: { card: bare(blackCard), coated: bare(black) },
    white: { card: bare(whiteCard), coated: bare(white) },
  });

test('the contrast ratio of a draw-down is Y over black by Y over white (ISO 6504-1, definition)', () => {
  expect(drawdown('Y', ['0.5', '60', '80', '72'])?.contrastRatio).toBeCloseTo(60 / 72, 12);
});

test('L* and Y of the same card say the same (CIE 015: Y = 18.418652 at L* 50, 48.278 at 75)', () => {
  const byL = drawdown('L', ['4.5', '75', '91.6', '85']);
  expect(byL?.contrastRatio).toBeCloseTo(48.278 / 66.0, 2); // Y 65.99 at L* 85, from the same definition
});

test('it hides at more film than was drawn when the card still showed, and its curve passes through what was read', () => {
  const hiding = drawdown('Y', ['0', '60', '80', '72']);
  expect(hiding?.filmToHideUm).toBeGreaterThan(25);
  expect(hiding?.at(25)).toBeCloseTo(60 / 72, 6); // grounds 0 and 0.8 are those of the chart
  expect(hiding?.at(hiding.filmToHideUm ?? 0)).toBeCloseTo(0.98, 4);
});

test.each([
  { what: 'both fields alike', said: ['0.5', '72', '80', '72'] as const },
  { what: 'fields the wrong way round', said: ['80', '72', '0.5', '60'] as const },
])('$what fit no film', ({ said }) => {
  expect(drawdown('Y', said)).toBeUndefined();
});
