import { expect, test } from 'vitest';
import type { Match } from '../../../src/logbook/fold/piece/matches';
import { aimFor, setsOf, targetOf } from '../../../src/shop/colour/aim';
import { sidesOf } from '../../../src/shop/colour/judge';
import { readSurface } from '../../../src/shop/colour/surface';
import { MATCH, MatchOnPaper, WHITE } from './a-match';

const onPaper = () => new MatchOnPaper(['ochre'], { through: 'bare' });
const setOf = (match: Match) => readSurface(setsOf(match, 'target'), match.white);
const photo = { as: 'photo', against: 'chart', L: 88, a: 0, b: 12, spread: 0.02 } as const;
const flat = (reflectance: number) =>
  ({
    as: 'spectrum',
    startNm: 400,
    stepNm: 10,
    reflectance: new Array<number>(31).fill(reflectance),
  }) as const;

test('dry readings count before wet ones, and the two are never averaged', () => {
  const read = setOf(
    onPaper()
      .read({ as: 'target' }, [['80', '0', '10']], { isDry: false })
      .read({ as: 'target' }, [
        ['86', '0', '14'],
        ['87', '0', '15'],
      ])
      .fold(),
  );
  expect(read.surface).toMatchObject({ lab: { L: 86.5, b: 14.5 }, count: 2, isDry: true });
  expect(read.leftAside).toEqual({ wet: 1, camera: 0, otherLight: 0 });
});

test('a reading under another light is kept and never compared', () => {
  const read = setOf(
    onPaper()
      .read({ as: 'target' }, [['86', '0', '14']], { white: 'D50/2' })
      .fold(),
  );
  expect(read.surface).toBeUndefined();
  expect(read.leftAside.otherLight).toBe(1);
});

test('a wet trial and a photo get a difference and no verdict, however near', () => {
  const read = { match: MATCH, white: 'D65/2', isDry: true, readings: [photo] } as const;
  const near = new MatchOnPaper(['ochre'], { through: 'bare', white: 'D65/2' })
    .read({ as: 'target' }, [['88', '0', '12']], { white: 'D65/2' })
    .mix(1, [[WHITE, '100']]);
  const wet = near.read(1, [['88', '0', '12']], { isDry: false, white: 'D65/2' }).fold();
  expect(verdictsOf(wet)).toEqual(['wet']);
  const byPhoto = new MatchOnPaper(['ochre'], { through: 'bare', white: 'D65/2' })
    .say({ kind: 'colour-read', of: { as: 'target' }, ...read })
    .mix(1, [[WHITE, '100']])
    .read(1, [['88', '0', '12']], { white: 'D65/2' });
  expect(verdictsOf(byPhoto.fold())).toEqual(['camera-ranks-only']);
});

test('a photo is carried over to the light of the match; an instrument reading is not', () => {
  const match = onPaper()
    .say({
      kind: 'colour-read',
      match: MATCH,
      of: { as: 'target' },
      white: 'D65/2',
      isDry: true,
      readings: [photo],
    })
    .read({ as: 'target' }, [['86', '0', '14']], { white: 'D65/2' })
    .fold();
  const { surface, leftAside } = targetOf(match);
  expect(surface).toMatchObject({ by: 'camera', count: 1 });
  expect(surface?.lab.white).toBe('D65/10');
  expect(leftAside.otherLight).toBe(1);
});

test('spectra are judged under daylight, lamp and LED; two flat greys differ alike under all', () => {
  const match = onPaper()
    .say({
      kind: 'colour-read',
      match: MATCH,
      of: { as: 'target' },
      white: 'D65/10',
      isDry: true,
      readings: [flat(0.7)],
    })
    .mix(1, [[WHITE, '100']])
    .say({
      kind: 'colour-read',
      match: MATCH,
      of: { as: 'trial', trial: trialOf(1) },
      white: 'D65/10',
      isDry: true,
      readings: [flat(0.6)],
    })
    .fold();
  const [first] = match.trials;
  const [side] = first ? sidesOf(match, first) : [];
  const lights = side?.judgement?.lights ?? [];
  expect(lights.map(({ white }) => white).sort()).toEqual(['A/10', 'D65/10', 'LED-B3/10']);
  for (const { dE00 } of lights) expect(dE00).toBeCloseTo(lights[0]?.dE00 ?? 0, 6);
});

test('accepting that it will yellow lowers the aim in b* alone', () => {
  const plain = onPaper()
    .read({ as: 'target' }, [['86', '0', '14']])
    .fold();
  const lower = new MatchOnPaper(['ochre'], { through: 'bare', yellowing: { text: '0.5', unit: 'ratio' } })
    .read({ as: 'target' }, [['86', '0', '14']])
    .fold();
  expect(aimFor(plain, 'bare')?.surface.lab).toMatchObject({ L: 86, a: 0, b: 14 });
  expect(aimFor(lower, 'bare')?.surface.lab).toMatchObject({ L: 86, a: 0, b: 13.5 });
});

const verdictsOf = (match: Match): (string | undefined)[] =>
  match.trials.flatMap((trial) => sidesOf(match, trial).map(({ judgement }) => judgement?.verdict.kind));

function trialOf(number: number): string {
  const trial = onPaper()
    .mix(number, [[WHITE, '1']])
    .fold().trials[0];
  if (!trial) throw new Error('No trial.');
  return trial.id;
}
