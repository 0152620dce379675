import { readFileSync } from 'node:fs';
import ICAL from 'ical.js';
import { beforeEach, describe, expect, test } from 'vitest';
import { base, goTo, page, takePhone } from '../app';
import { axeViolations, overTheSide } from '../looked-at';
import { button, openLine, unfold } from '../on-screen';
import { layCoat, NINE, openAt, PHONE, planBox } from './plan-steps';

beforeEach(async () => {
  await takePhone(PHONE);
  await openAt(NINE);
});

describe('the plan', () => {
  test('marks its step when a coat is laid, and says what moved', async () => {
    const id = await planBox();
    await layCoat(id);
    await page.goto(`${base}#/plan/${id}`);
    await page.getByText('1 step done, 2 skipped').waitFor();
    await page.getByText('The plan has moved').waitFor();
  });

  test('gives a calendar that a second one corrects', async () => {
    const id = await planBox();
    await page.goto(`${base}#/plan`);
    const first = await calendar();
    expect(first.length).toBeGreaterThan(10);
    await layCoat(id);
    await page.goto(`${base}#/plan`);
    const second = await calendar();
    const again = new Map(second.map((event) => [event.uid, event]));
    const coatsLeft = first.filter(({ uid }) => again.get(uid)?.status === 'CONFIRMED');
    expect(coatsLeft.length).toBeGreaterThan(10);
    for (const { uid, sequence } of first) expect(again.get(uid)?.sequence).toBeGreaterThanOrEqual(sequence);
    expect(second.some(({ sequence }) => sequence > 0)).toBe(true);
  });

  test('explains a week without hours, and a day promised that is past', async () => {
    const id = await planBox();
    await unfold('Promise to the owner');
    await page.getByLabel('Promised date').fill('2025-03-01');
    await button('Promise this date').tap();
    await page.getByText('That date is already past. Choose a later one and tell the owner.').waitFor();
    await page.goto(`${base}#/plan/hours`);
    for (const day of ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday']) await takeOut(day);
    await button('Save the week').tap();
    await page.goto(`${base}#/plan`);
    await page.getByText('The working week has no hours. Set at least one day when you work.').waitFor();
    await page.goto(`${base}#/plan/${id}`);
    await page.getByText('No plan is possible yet').waitFor();
  });

  async function takeOut(day: string): Promise<void> {
    await openLine(day);
    await page.getByRole('checkbox', { name: day, exact: true }).uncheck();
  }

  async function calendar(): Promise<{ uid: string; sequence: number; status: string }[]> {
    const coming = page.waitForEvent('download');
    await button('Add to the calendar').tap();
    const text = readFileSync(await (await coming).path(), 'utf8');
    const events = new ICAL.Component(ICAL.parse(text)).getAllSubcomponents('vevent');
    return events.map((event) => ({
      uid: String(event.getFirstPropertyValue('uid')),
      sequence: Number(event.getFirstPropertyValue('sequence')),
      status: String(event.getFirstPropertyValue('status')),
    }));
  }
});

describe('every page of the plan', () => {
  test.each([
    { width: 390, height: 844, colorScheme: 'light' },
    { width: 390, height: 844, colorScheme: 'dark' },
    { width: 360, height: 640, colorScheme: 'light' },
    { width: 1024, height: 768, colorScheme: 'dark' },
  ] as const)(
    'is without fault for a screen reader at $width, $colorScheme',
    async ({ width, height, colorScheme }) => {
      await page.setViewportSize({ width, height });
      await page.emulateMedia({ colorScheme });
      const id = await planBox();
      for (const hash of [
        'plan',
        `plan/${id}`,
        `plan/${id}/owner`,
        `plan/${id}/start`,
        'plan/hours',
        'plan/reminders',
        'board',
        'bench',
      ]) {
        await goTo(`#/${hash}`);
        for (const summary of await page.locator('main summary').all()) await summary.click();
        expect(await axeViolations(), hash).toEqual([]);
        expect(await overTheSide(), hash).toBe(0);
      }
    },
  );
});
