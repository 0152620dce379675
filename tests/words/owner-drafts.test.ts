import { expect, test } from 'vitest';
import { OWNER_DRAFTS, type OwnerFacts } from '../../src/words/plan/owner';

const FACTS: OwnerFacts = {
  piece: 'Box',
  promiseFrom: '20 Mar',
  promised: undefined,
  isPromiseKept: true,
  earliest: '10 Mar',
  likely: '15 Mar',
  coatsDone: 8,
  coatsPlanned: 8,
  next: undefined,
  nextWhen: undefined,
  why: undefined,
  settled: undefined,
  isHeld: false,
  setAside: [],
};
const still = { next: 'Rub out', nextWhen: '12 Mar' };

test.each([
  { what: 'everything is done', facts: {}, says: /can be collected/ },
  { what: 'something is still to be done', facts: still, says: /not ready yet\. Next: rub out, 12 Mar/ },
  { what: 'something is held', facts: { isHeld: true }, says: /not ready yet.*no date holds until it is/ },
  { what: 'it goes on hardening', facts: { settled: '1 May' }, says: /Until about 1 May keep/ },
])('ready, where $what', ({ facts, says }) => {
  expect(OWNER_DRAFTS.ready({ ...FACTS, ...facts })).toMatch(says);
});

test.each([
  { what: 'kept', facts: {}, says: /promised for 18 Mar\./, never: /later|no date holds/ },
  { what: 'missed', facts: { isPromiseKept: false }, says: /later than 18 Mar/, never: /is promised for/ },
  { what: 'held', facts: { isHeld: true }, says: /no date holds/, never: /is promised for/ },
])('a day promised that is $what', ({ facts, says, never }) => {
  for (const kind of ['accepted', 'progress'] as const) {
    const text = OWNER_DRAFTS[kind]({ ...FACTS, promised: '18 Mar', ...facts });
    expect(text).toMatch(says);
    expect(text).not.toMatch(never);
  }
});
