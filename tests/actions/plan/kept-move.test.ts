import 'fake-indexeddb/auto';
import { signal } from '@preact/signals';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { followPlan } from '../../../src/actions/plan/follow-plan';
import { keepMove, keptMove } from '../../../src/actions/plan/kept-move';
import { planPiece } from '../../../src/actions/plan/plan-piece';
import { setHours } from '../../../src/actions/plan/set-hours';
import type { Difference } from '../../../src/planner/difference';
import { aShop, done, newName, storeOn } from '../a-shop';

/** A browser's small store, as far as it is used. */
function smallStore(): Pick<Storage, 'getItem' | 'setItem' | 'removeItem'> {
  const kept = new Map<string, string>();
  return {
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
  };
}
beforeEach(() => vi.stubGlobal('localStorage', smallStore()));
afterEach(() => void vi.unstubAllGlobals());

const FOUND: Difference = { moved: [], added: [], removed: [], pieces: [{ pieceId: 'a', minutes: 30 }] };

describe('what the newest entry moved', () => {
  test('is found again while that entry is the newest, in whatever order the entries lie', () => {
    keepMove('own', ['1', '3', '2'], FOUND);
    expect(keptMove('own', ['3', '1', '2'])).toEqual(FOUND);
    expect(keptMove('own', ['1', '2', '3', '4'])).toBeUndefined();
    expect(keptMove('demo', ['1', '2', '3'])).toBeUndefined();
  });

  test('is dropped once it is seen', () => {
    keepMove('own', ['1'], FOUND);
    keepMove('own', ['1'], undefined);
    expect(keptMove('own', ['1'])).toBeUndefined();
  });

  test('is nothing where the browser keeps nothing, or something else lies there', () => {
    localStorage.setItem('coatwait-moved', '{"newest":"1","found":7}');
    expect(keptMove('own', ['1'])).toBeUndefined();
    localStorage.setItem('coatwait-moved', '{"newest":"1","found":{"moved":[]}}');
    expect(keptMove('own', ['1'])).toBeUndefined();
    localStorage.setItem('coatwait-moved', '{"newest":"1","found":{"pieces":[]}}');
    expect(keptMove('own', ['1'])).toBeUndefined();
    localStorage.setItem('coatwait-moved', 'no text of ours');
    expect(keptMove('own', ['1'])).toBeUndefined();
    vi.stubGlobal('localStorage', undefined);
    keepMove('own', ['1'], FOUND);
    expect(keptMove('own', ['1'])).toBeUndefined();
  });
});

const day = (open: string, close: string) => ({ work: [{ open, close }] });
const week = (open: string, close: string) => Array.from({ length: 7 }, () => day(open, close));

async function plannedShop(name: string) {
  const open = await aShop({ store: storeOn(name) });
  const { piece } = done(await open.actions.startPiece({ name: 'Box', base: 'sealed' }));
  done(await setHours(open.needs, { week: week('08:00', '17:00') }));
  const task = { kind: 'work', task: 'level-sand', place: 'bench', minutes: 60 } as const;
  done(await planPiece(open.needs, { piece, coatsADay: 1, steps: [{ ...task, id: open.needs.newId() }] }));
  return open;
}
/** A shop with a piece planned, and hours that have been moved since. */
async function movedShop(name: string) {
  const open = await plannedShop(name);
  const plan = followPlan(open);
  await vi.waitFor(() => expect(open.isWhole.value && plan.planned.value.plan.ok).toBe(true));
  done(await setHours(open.needs, { week: week('19:00', '21:00') }));
  await vi.waitFor(() => expect(plan.moved.value).toBeDefined());
  return { open, plan };
}
/** The same shop once the app was closed and opened again. */
async function reopened(name: string) {
  const open = await aShop({ store: storeOn(name) });
  const plan = followPlan(open);
  await vi.waitFor(() => expect(open.isWhole.value && plan.planned.value.plan.ok).toBe(true));
  expect(open.shop.value.plans.size).toBe(1);
  return plan;
}

describe('when the app is closed and opened again', () => {
  test('what moved is still said', async () => {
    const name = newName();
    const { open, plan } = await movedShop(name);
    const said = plan.moved.value;
    open.close();
    expect((await reopened(name)).moved.value).toEqual(said);
  });

  test('it is not, once it was seen', async () => {
    const name = newName();
    const { open, plan } = await movedShop(name);
    plan.seen();
    open.close();
    expect((await reopened(name)).moved.value).toBeUndefined();
  });

  test('what is read in after the first page moves nothing', async () => {
    const open = await plannedShop(newName());
    const isWhole = signal(false);
    const plan = followPlan({ ...open, isWhole });
    done(await setHours(open.needs, { week: week('06:00', '07:30') }));
    isWhole.value = true;
    expect(plan.moved.value).toBeUndefined();
    done(await setHours(open.needs, { week: week('19:00', '21:00') }));
    expect(plan.moved.value).toBeDefined();
  });
});
