import { signal } from '@preact/signals';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { followReminders } from '../../src/actions/reminders/follow-reminders';
import type { OpenShop } from '../../src/actions/shop';
import { factsOf } from '../../src/actions/verdicts/facts-of';
import type { Piece } from '../../src/logbook/fold/piece/pieces';
import type { Reminder } from '../../src/reminders/reminder';
import { reminderText } from '../../src/reminders/say';
import type { Act } from '../../src/verdicts/act';
import { verdictOn } from '../../src/verdicts/verdict';
import { VERDICT_WORDS } from '../../src/words/verdicts/words';
import { layCoat, PIECE } from '../logbook/entries';
import { nowOf, outlookOf, type Said, shopOf, shops } from './random-shops';

const CALLS_TO: Readonly<Record<string, Act>> = {
  'next-coat': 'coat',
  scuff: 'scuff',
  'level-sand': 'level-sand',
  'rub-out': 'rub-out',
};

/** The reminders of acts as the app follows them at an instant, and the judge's word then. */
function actsAt(said: Said, nowMs: number) {
  const shop = shopOf(said);
  const piece = shop.pieces.get(PIECE) as Piece;
  const outlook = outlookOf(said, piece);
  const outlooks = new Map([[PIECE, outlook]]);
  const { due, missed, upcoming } = followReminders({
    which: 'own',
    isWhole: signal(false),
    shop: signal(shop),
    settled: signal({ shop, outlooks }),
    cards: signal(new Map()),
    nowMs: signal(nowMs),
    needs: { zone: () => 'Europe/Berlin', now: () => nowMs },
  } as unknown as OpenShop).value;
  const isAct = ({ kind }: Reminder): boolean => kind in CALLS_TO;
  const facts = factsOf({ shop, piece, outlook, nowMs });
  const wordOn = ({ kind }: Reminder): string => verdictOn({ act: CALLS_TO[kind] as Act }, facts).word;
  return {
    due: [...due, ...missed].filter(isAct),
    upcoming: upcoming.filter(isAct),
    wordOn,
    isGuess: facts.clock === 'failed',
  };
}

/** Shops with a late coat, so that some of it is still to come. */
const coated = fc
  .tuple(shops, fc.integer({ min: 500, max: 800 }))
  .map(([said, hour]): Said => ({ ...said, done: [...said.done, [hour, layCoat()]] }));

test('no reminder calls to what the judge holds', () => {
  let called = 0;
  fc.assert(
    fc.property(shops, (said) => {
      const { due, upcoming, wordOn } = actsAt(said, nowOf(said));
      for (const reminder of [...due, ...upcoming]) {
        called++;
        expect(wordOn(reminder), reminder.kind).not.toBe('hold');
      }
    }),
    { numRuns: 250 },
  );
  expect(called).toBeGreaterThan(0);
});

/** A film that was sanded away to nothing: where there is none, none is waited for. */
const SANDED_AWAY: Said = {
  base: 'bare-wood',
  finish: 'nitrocellulose',
  done: [
    [799, { kind: 'sanded', piece: PIECE, stage: 'scuff', removed: { text: '40', unit: 'um' } }],
    [500, layCoat()],
  ],
  isPlanned: true,
  isOwnWait: false,
  outlook: 'failed',
  nowHour: 801,
};

// Found so: of 70 reminders 56 sounded while the judge still said perhaps, and one while it said wait.
test('when a reminder sounds, the judge says what it says', () => {
  const seen: Record<string, number> = {};
  fc.assert(
    fc.property(coated, (said) => {
      if (said.outlook === 'computing') return;
      const nowMs = nowOf(said);
      for (const { id, at } of actsAt(said, nowMs).upcoming) {
        const sounding = actsAt(said, at * 60_000);
        const reminder = sounding.due.find((one) => one.id === id);
        if (!reminder) continue; // the plan has moved it on: what comes before it is still to be done
        const word = sounding.wordOn(reminder);
        seen[word] = (seen[word] ?? 0) + 1;
        expect(word).toBe(sounding.isGuess ? 'perhaps' : 'ready');
        const { text } = reminderText(reminder, undefined);
        expect(text.split('.')[0]).toBe(VERDICT_WORDS[word as 'ready' | 'perhaps']);
      }
    }),
    { numRuns: 1000, examples: [[SANDED_AWAY]] }, // about one in five has such a reminder: 29 to 54 of 250 were seen
  );
  expect(seen['ready']).toBeGreaterThan(40);
});

test('where no time makes it ready a reminder says perhaps, and how to try it', () => {
  const said: Said = {
    base: 'bare-wood',
    finish: 'nitrocellulose',
    done: [[800, layCoat()]],
    isPlanned: true,
    isOwnWait: true,
    outlook: 'failed',
    nowHour: 801,
  };
  const { upcoming } = actsAt(said, nowOf(said));
  expect(upcoming.map(({ kind }) => kind)).toEqual(['level-sand', 'rub-out']);
  for (const reminder of upcoming)
    expect(reminderText(reminder, undefined).text).toMatch(/^Perhaps\. .*a thumb leaves no print/);
});
