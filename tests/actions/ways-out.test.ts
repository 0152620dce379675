import { expect, test } from 'vitest';
import { refuseMix } from '../../src/actions/mix/mix-refused';
import { refuse } from '../../src/actions/refused';
import type { AppendFailure } from '../../src/logbook/logbook';
import type { MixFailure } from '../../src/science/mixing/failure';
import { FAILURE_WORDS } from '../../src/words/frame/refusals';
import { MIX_FAILURES } from '../../src/words/mix/failure';

// Every refusal that a form of the app can meet, and where one tap from it leads: a field of the form, or an address.
const MIX_WAYS: Record<string, string> = {
  empty: 'lines',
  'not-positive': 'lines.0.amount',
  'unknown-ingredient': '#/mix/ingredient/new',
  'contains-itself': '#/mix/ingredient/a/change',
  'parts-with-amounts': 'lines',
  'parts-of-two-kinds': 'lines',
  'no-lacquer': 'lines',
  'shares-over-whole': 'lines',
  'shares-do-not-add-up': 'lines',
  'no-density': '#/mix/ingredient/a/change',
  'no-drop-mass': '#/mix/ingredient/a/change',
  'no-solids': '#/mix/ingredient/a/change',
  'no-solvents': '#/mix/ingredient/a/change',
  'no-pigment-share': '#/mix/ingredient/a/change',
  'no-critical-pigment': '#/mix/ingredient/a/change',
};

type Way = { readonly fields: Readonly<Record<string, string>>; readonly way?: readonly string[] };
const wayOf = ({ fields, way }: Way): string | undefined =>
  way ? `#/${way.join('/')}` : Object.keys(fields)[0];

test('every refusal of the logbook says what to do and leads there', () => {
  const led = Object.keys(FAILURE_WORDS).map((kind) => {
    const refused = refuse({ kind, earliestMs: 0, latestMs: 0 } as unknown as AppendFailure, 'UTC');
    if (refused.ok) throw new Error('Not refused.');
    expect(refused.failure.sentence).toMatch(/\.$/);
    return [kind, wayOf(refused.failure)] as const;
  });
  console.log(led.map(([kind, way]) => `${kind}: ${way}`).join('\n'));
  expect(led.filter(([, way]) => way === undefined)).toEqual([]);
  expect(Object.fromEntries(led)).toMatchObject({
    'too-early': 'at',
    'in-the-future': 'at',
    'unknown-piece': '#/bench',
    'unknown-jar': '#/mix',
    'unknown-ingredient': '#/mix/ingredient/new',
    'unknown-match': '#/match',
    'unknown-air': '#/air',
    'unknown-step': '#/plan',
    full: '#/more',
    'contains-itself': '#/mix/ingredient',
    'unknown-filter': '#/air/filters',
  });
});

test('what a form can show beside its field stands there too; a time is written for the shop’s zone', () => {
  const refused = (kind: string, zone = 'UTC') => {
    const failure = { kind, earliestMs: 0, latestMs: Date.UTC(2026, 2, 10, 13) } as unknown as AppendFailure;
    const told = refuse(failure, zone);
    return told.ok ? expect.unreachable() : told.failure;
  };
  expect(refused('unknown-jar')).toMatchObject({ fields: { jar: expect.any(String) }, way: ['mix'] });
  expect(refused('unknown-piece').fields).toHaveProperty('piece');
  expect(refused('piece-closed').fields).toHaveProperty('piece');
  expect(refused('unknown-air').fields).toHaveProperty('air');
  expect(refused('too-wet')).toEqual({
    sentence: expect.any(String),
    fields: { 'film.passes': expect.any(String) },
  });
  expect(refused('unknown-step').fields).toEqual({});
  expect(refused('in-the-future').sentence).toContain('13:00');
  expect(refused('in-the-future', 'Europe/Berlin').sentence).toContain('14:00');
});

test('every refusal of a mix leads to its line, or to the ingredient that lacks something', () => {
  const led = Object.keys(MIX_FAILURES).map((kind) => {
    const failure = {
      kind,
      ...(kind === 'not-positive' ? { line: 0 } : {}),
      ...(kind === 'contains-itself' ? { path: ['a', 'b', 'a'] } : {}),
      ...(kind.startsWith('no-') && kind !== 'no-lacquer' ? { ingredient: 'a' } : {}),
      ...(kind === 'shares-do-not-add-up' ? { sum: 0.5 } : {}),
    } as unknown as MixFailure;
    const refused = refuseMix(failure, { ingredients: new Map() });
    if (refused.ok) throw new Error('Not refused.');
    return [kind, wayOf(refused.failure)] as const;
  });
  expect(Object.fromEntries(led)).toEqual(MIX_WAYS);
});
