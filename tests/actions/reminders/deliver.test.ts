import 'fake-indexeddb/auto';
import { afterEach, beforeEach, expect, onTestFinished, test, vi } from 'vitest';
import { answerReminder } from '../../../src/actions/reminders/answer-reminder';
import { deliverReminders } from '../../../src/actions/reminders/deliver';
import { followReminders } from '../../../src/actions/reminders/follow-reminders';
import { setReminders } from '../../../src/actions/reminders/set-reminders';
import type { OpenShop } from '../../../src/actions/shop';
import { markIds } from '../../../src/logbook/ids/new-id';
import { newMark } from '../../../src/logbook/ids/phone-mark';
import { aShop, done, NOW_MS } from '../a-shop';

const MINUTE_MS = 60_000;
const rings = vi.hoisted(() => ({ count: 0 }));
vi.mock('../../../src/reminders/phone/ring', () => ({
  armSound: () => undefined,
  ring: () => {
    rings.count++;
  },
}));

vi.stubGlobal('document', { visibilityState: 'visible' });
vi.stubGlobal('navigator', {});
vi.stubGlobal('addEventListener', () => undefined);

/** A phone of a shop with a clock of its own; its ids are made by that clock, and end with its mark. */
interface Phone {
  readonly open: OpenShop;
  readonly mark: string;
  goTo(ms: number): void;
}
async function aPhone(): Promise<Phone> {
  const mark = newMark();
  let ms = NOW_MS;
  const ticks: (() => void)[] = [];
  const open = await aShop({
    now: () => ms,
    every: (_period, job) => {
      ticks.push(job);
      return () => undefined;
    },
  });
  const goTo = (to: number): void => {
    ms = to;
    vi.setSystemTime(to);
    for (const tick of ticks) tick();
  };
  return { open, mark, goTo };
}

/** What one phone has is on the other. */
const carry = async (from: OpenShop, to: OpenShop): Promise<void> =>
  void done(await to.needs.logbook.take({ entries: [...from.shop.value.entries.values()], setAside: [] }));

/** Takes a phone in hand: what is logged next is logged there. */
const inHand = ({ mark }: Phone): void => markIds(mark);

beforeEach(() => {
  rings.count = 0;
  vi.useFakeTimers({ toFake: ['Date'], now: NOW_MS });
});
afterEach(() => {
  markIds('');
  vi.useRealTimers();
});

const percent = (text: string) => ({ text, unit: '%' }) as const;

/** Fills a jar with a pot life; gives when the reminder of its end is due. */
async function jarThatEnds({ open }: Phone): Promise<number> {
  done(
    await open.actions.fillJar({
      name: 'Mixed clear',
      product: { finish: 'precatalysed', volumeSolids: percent('25') },
      thinner: { name: 'Thinner', blend: [{ solvent: 'butyl-acetate', share: 1 }] },
      thinning: { of: 'lacquer', percent: percent('10') },
      life: { span: { text: '8', unit: 'h' }, as: 'pot' },
    }),
  );
  const jarEnd = followReminders(open).value.upcoming.find(({ kind }) => kind === 'jar-end');
  if (!jarEnd) throw new Error('Nothing reminds of the end of the jar.');
  return jarEnd.at * MINUTE_MS;
}

test.each([
  { who: 'here', isOther: false, rung: 0 },
  { who: 'on another phone', isOther: true, rung: 1 },
])(
  'a reminder due half a minute after something was logged $who rings $rung times',
  async ({ isOther, rung }) => {
    const [one, two] = [await aPhone(), await aPhone()];
    inHand(one);
    const dueMs = await jarThatEnds(one);
    await carry(one.open, two.open);
    onTestFinished(deliverReminders(one.open, () => undefined));
    const by = isOther ? two : one;
    one.goTo(dueMs - MINUTE_MS / 2);
    two.goTo(dueMs - MINUTE_MS / 2);
    inHand(by);
    done(await by.open.actions.startPiece({ name: 'Box', base: 'sealed' }));
    inHand(one);
    await carry(by.open, one.open);
    one.goTo(dueMs);
    expect(rings.count).toBe(rung);
  },
);

test.each(['done', 'later'] as const)(
  'a reminder answered "%s" on one phone is gone on the other',
  async (answer) => {
    const [one, two] = [await aPhone(), await aPhone()];
    inHand(one);
    const dueMs = await jarThatEnds(one);
    await carry(one.open, two.open);
    for (const phone of [one, two]) phone.goTo(dueMs);
    const due = ({ open }: Phone) => followReminders(open).value.due.map(({ kind }) => kind);
    expect([due(one), due(two)]).toEqual([['jar-end'], ['jar-end']]);
    const [reminder] = followReminders(one.open).value.due;
    if (!reminder) throw new Error('Nothing is due.');
    done(await answerReminder(one.open.needs, reminder, answer, dueMs));
    await carry(one.open, two.open);
    expect([due(one), due(two)]).toEqual([[], []]);
    for (const phone of [one, two]) phone.goTo(dueMs + 20 * MINUTE_MS);
    expect(due(two)).toEqual(answer === 'later' ? ['jar-end'] : []);
  },
);

test('in the quiet hours that were set nothing is due; at their end it is', async () => {
  const phone = await aPhone();
  inHand(phone);
  const dueMs = await jarThatEnds(phone);
  const due = () => followReminders(phone.open).value.due.map(({ kind }) => kind);
  // In Berlin, an hour ahead of UTC in winter: from a quarter of an hour before to three quarters after.
  const clock = (ms: number): string => new Date(ms + 60 * MINUTE_MS).toISOString().slice(11, 16);
  const quiet = { open: clock(dueMs - 15 * MINUTE_MS), close: clock(dueMs + 45 * MINUTE_MS) };
  done(await setReminders(phone.open.needs, { off: [], quiet }));
  phone.goTo(dueMs);
  expect(due()).toEqual([]);
  phone.goTo(dueMs + 46 * MINUTE_MS);
  expect(due()).toEqual(['jar-end']);
});
