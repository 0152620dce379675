import { beforeEach, expect, test } from 'vitest';
import { goTo, page } from '../app';
import { closeToast, fillJar, leadFound, logCoat, openAt, plan, startPiece } from '../jobs/judged-shop';
import { axeViolations, overTheSide } from '../looked-at';
import { button, choose, field, link, said, section, title, unfold } from '../on-screen';

/** The steps after the next five. */
const openMoreSteps = () => page.getByText(/^\d+ more steps?$/).tap();

beforeEach(() => openAt('2026-03-02T09:00:00+01:00')); // a Monday

test('lead found: no date is promised until it is resolved; a reason in writing lets it be, and is told to the owner', async () => {
  const piece = await startPiece('Nursery chair', /^Old finish that stays hard/);
  await goTo(`#/piece/${piece}/old`, 'Old finish');
  await unfold('How it looks');
  await choose('Opaque: white or a colour');
  await button('Save').tap();
  await closeToast();
  await leadFound();
  await plan(piece, /^Full clear/);
  await said('No date to promise while something is held').waitFor();
  await section('Promise to the owner').getByText('Lead in the old paint').waitFor();
  expect(await page.getByText('Earliest date to promise').count()).toBe(0);
  expect(await page.getByLabel('Promised date').count()).toBe(0);
  expect(await axeViolations()).toEqual([]);
  expect(await overTheSide()).toBe(0);
  expect(await link('Test for lead').count()).toBe(0);
  await link('See what was found').first().tap();
  await title('Old finish');
  await goTo('#/plan', 'Plan');
  await said('Held: promising a date').waitFor();
  await goTo(`#/plan/${piece}`);
  await page.getByText('Set it aside in writing').tap();
  await field('Your reason').fill('Wet methods only, the owner knows of the lead.');
  await button('Log the reason').tap();
  await said('Earliest date to promise').waitFor();
  await said('the owner knows of the lead').waitFor();
  await button('Promise this date').tap();
  await said(/^Promised for/).waitFor();
  await goTo(`#/plan/${piece}/owner`, 'Write to the owner');
  await choose('Accepted');
  expect(await field('Message').inputValue()).toContain('the owner knows of the lead');
});

test('the coats are on already: the plan waits by the moments of the page, and a first plan has moved nothing', async () => {
  await fillJar(/^Nitrocellulose/, 'Gloss');
  const piece = await startPiece('Fiddle', /^Sealed wood/);
  await logCoat(piece);
  await closeToast();
  await section('When it may be touched').getByText('Level-sand').waitFor();
  const shown = (await section('When it may be touched').textContent()) ?? '';
  const day = /Level-sand from (\d+ Mar)/.exec(shown)?.[1] ?? '';
  await plan(piece, /^The coats are on already/);
  await said('Harden for level-sanding').waitFor();
  await openMoreSteps();
  await said('Harden for rubbing out').waitFor();
  await page.clock.runFor(2000);
  expect(await page.getByText('The plan has moved').count()).toBe(0);
  expect(await section('Steps').getByText('by the drying model').count()).toBe(2);
  expect(await section('Steps').getByText('as soon as you like').count()).toBe(0); // the wait is running
  const levelled = section('Steps').locator('.plan-step', { hasText: 'Level-sand' }).first();
  expect(day).not.toBe('');
  expect(await levelled.textContent()).toContain(day === '3 Mar' ? 'tomorrow' : day);
});

test('a clear drop fill: eight drops, three a day, hard in weeks, and a look for sinking a week after levelling', async () => {
  const piece = await startPiece('Mandolin', /^Old finish that softens/);
  await plan(piece, /^Clear drop fill/);
  await openMoreSteps();
  const steps = section('Steps');
  expect(await steps.locator('strong', { hasText: 'Drop fill' }).count()).toBe(8);
  await steps.locator('strong', { hasText: 'no more sinking' }).waitFor();
  const names = (await steps.locator('.plan-step-name').allTextContents()).join('\n');
  expect(names.indexOf('Level-sand')).toBeLessThan(names.indexOf('Check: no more sinking'));
  expect(names.indexOf('Check: no more sinking')).toBeLessThan(names.indexOf('Harden for rubbing out'));
});

test('shellac by pad: a concert on the sixth of April is not promised in green', async () => {
  const piece = await startPiece('Guitar top', /^Bare wood/);
  await plan(piece, /^Shellac by pad/);
  await openMoreSteps();
  await section('Steps').getByText('Spirit off', { exact: true }).first().waitFor();
  // Playable from 16 to 20 March at the earliest, comfortable from 30 March to 10 April (common practice, no source).
  const ready = (await section('Ready').textContent()) ?? '';
  const [, earliest = ''] = /\((\d+ Mar)–/.exec(ready) ?? [];
  const [, comfortable = ''] = /Earliest date to promise: (?:\w+ )?(\d+ \w+)/.exec(ready) ?? [];
  const day = (text: string): number => Date.parse(`${text} 2026`);
  expect(day(earliest)).toBeGreaterThanOrEqual(day('16 Mar'));
  expect(day(earliest)).toBeLessThanOrEqual(day('20 Mar'));
  expect(day(comfortable)).toBeGreaterThanOrEqual(day('30 Mar'));
  expect(day(comfortable)).toBeLessThanOrEqual(day('10 Apr'));
  await unfold('Promise to the owner');
  await page.getByLabel('Promised date').fill('2026-04-06');
  await button('Promise this date').tap();
  await said('the film is still soft').waitFor();
});
