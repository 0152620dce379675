import { describe, expect, test } from 'vitest';
import { fold } from '../../../src/logbook/fold/fold';
import type { Match } from '../../../src/logbook/fold/piece/matches';
import { advise } from '../../../src/shop/colour/advice';
import type { LotChanges } from '../../../src/shop/colour/lessons';
import { DAY_S } from '../../../src/units';
import { entry } from '../../logbook/entries';
import { MatchOnPaper, tinterId, trialId, WHITE } from './a-match';

const DAY_MS = DAY_S * 1000;
const OCHRE = tinterId('ochre');

/** A match that has come as far as the untinted base. */
const begun = (base = WHITE) =>
  new MatchOnPaper(['ochre'], { through: 'bare', base })
    .read({ as: 'target' }, [['86.5', '-0.6', '14.8']])
    .mix(1, [[base, '200']])
    .read(1, [['95.5', '-0.8', '2.2']]);
/** In the first match, 2 g of ochre led as far as a much stronger one would. */
const FIRST = {
  ...begun()
    .mix(2, [[OCHRE, '2']])
    .read(2, [['93', '-1', '16']])
    .fold(),
  id: 'first',
};
const later = (days: number, of: Match = begun().fold()): Match => ({
  ...of,
  id: 'second',
  begunMs: FIRST.begunMs + days * DAY_MS,
});

function ochreIn(match: Match, all: readonly Match[], lots: LotChanges = {}) {
  const advice = advise(match, all, lots);
  const [ochre] = advice.kind === 'advice' ? advice.strengths : [];
  if (!ochre) throw new Error('Ochre is not known.');
  return ochre;
}
const taught = (match: Match, lots?: LotChanges) => ochreIn(match, [FIRST, match], lots);
const untaught = ochreIn(begun().fold(), []);

describe('what an earlier match taught of a tinter', () => {
  test('is where the next one starts, with less doubt, and says from which trial', () => {
    const ochre = taught(later(1));
    expect(ochre.factor).toBeGreaterThan(1.1);
    expect(ochre.factor).toBeLessThan(ochreIn(FIRST, [FIRST]).factor);
    expect(ochre.doubt).toBeLessThan(untaught.doubt);
    expect(ochre.earlier).toEqual([{ match: 'first', trial: trialId(2) }]);
  });

  test.each([
    { less: 'after three years', ochre: taught(later(3 * 365)) },
    {
      less: 'once the tinter is of another lot',
      ochre: taught(later(20), { [OCHRE]: [FIRST.begunMs + 9 * DAY_MS] }),
    },
    { less: 'in another base', ochre: taught(later(1, begun(tinterId('black')).fold())) },
  ])('counts less $less', ({ ochre }) => {
    expect(ochre.factor).toBeLessThan(taught(later(20)).factor);
    expect(ochre.factor).toBeGreaterThan(1);
    expect(ochre.doubt).toBeGreaterThan(taught(later(20)).doubt);
  });

  test('counts as before when the lot changed before it, or after the next began', () => {
    const changes = { [OCHRE]: [FIRST.begunMs - DAY_MS, FIRST.begunMs + 30 * DAY_MS] };
    expect(taught(later(20), changes)).toEqual(taught(later(20)));
  });

  test('is handed on through a match that used none of it', () => {
    const between = { ...later(1), id: 'between' };
    const third = later(20);
    expect(ochreIn(third, [FIRST, between, third])).toEqual(taught(third));
  });

  test.each([
    {
      why: 'it is taken for another usual tinter',
      match: { ...later(1), tinters: [{ ingredient: OCHRE, like: 'raw sienna' as const }] },
    },
    { why: 'the match was begun before', match: later(-1) },
    { why: 'another tinter was weighed out', match: later(1), ofNobody: true },
  ])('says nothing where $why', ({ match, ofNobody }) => {
    const first = ofNobody ? { ...FIRST, trials: FIRST.trials.slice(0, 1) } : FIRST;
    expect(ochreIn(match, [first, match])).toMatchObject({
      factor: untaught.factor,
      doubt: untaught.doubt,
      earlier: [],
    });
  });
});

test('another lot is one that is named so; naming the lot of what stands there is none', () => {
  const described = (n: number, lot?: string) =>
    entry(n, {
      kind: 'ingredient-described',
      ingredient: OCHRE,
      name: 'Ochre',
      is: 'tinter',
      ...(lot && { lot }),
    });
  const lines = [described(1), described(2, 'A'), described(3, 'A'), described(4, 'B')];
  const shop = fold(lines);
  expect(shop.ingredients.get(OCHRE)?.lotChangesMs).toEqual([Date.parse(lines[3]?.at ?? '')]);
});
