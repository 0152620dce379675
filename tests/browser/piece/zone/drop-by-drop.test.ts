import { expect, test } from 'vitest';
import { goTo, here, newPage, page, takePhone } from '../../app';
import { MOBILE } from '../../browser';
import { axeViolations, overTheSide } from '../../looked-at';
import { button, choose, field, heading, link, said, saveChip, section, title } from '../../on-screen';

// A chip in an old gloss, filled drop by drop from Monday 2 March 2026 to Thursday the fifth, on a clock that is moved by hand.
const at = (day: number, clock: string): number =>
  new Date(`2026-03-${String(day).padStart(2, '0')}T${clock}:00+01:00`).getTime();
/** Days later the phone is taken out of the pocket again. */
async function wakeAt(day: number, clock: string, hash?: string): Promise<void> {
  await page.clock.setSystemTime(at(day, clock));
  if (hash) await goTo(hash);
  await page.reload();
  await page.getByRole('heading', { level: 1 }).waitFor();
}

async function setUp(): Promise<string> {
  await takePhone({ ...MOBILE, timezoneId: 'Europe/Berlin' });
  await newPage();
  await page.clock.setSystemTime(at(2, '09:00'));
  await goTo('#/piece/new', 'Start a piece');
  await field('Name').fill('Old gloss top');
  await choose(/^Old finish that softens/);
  await button('Start this piece').tap();
  await title('Old gloss top');
  const piece = here();
  await goTo('#/mix/jar/new');
  await field('Name of the jar').fill('Brush lacquer');
  await field('Volume solids as sold').fill('25');
  await field('How much thinner').fill('0');
  await button('Fill the jar').tap();
  await title('Brush lacquer');
  await goTo('#/air/read');
  await field('Air temperature').fill('21');
  await page.getByRole('textbox', { name: /^Humidity/ }).fill('48');
  await button('Log the reading').tap();
  await goTo(`${piece}/zone/new`, 'Mark a place');
  await saveChip();
  return piece;
}

/** One tap; on a day's first drop by way of what is to be read. */
async function logDrop(number: number): Promise<void> {
  const words = `Log drop ${number} of 7–11`;
  await link(words).or(button(words)).first().tap();
  const cautions = button('Read and done');
  const logged = said(number === 1 ? '1 drop is in.' : `${number} drops are in.`);
  await logged
    .or(cautions)
    .or(button(/^Log it/))
    .first()
    .waitFor();
  if (here().startsWith('#/lay')) {
    if ((await cautions.count()) > 0) await cautions.tap();
    await button(/^Log it/)
      .first()
      .tap();
  }
  await title('Lower edge');
  await logged.waitFor();
}

test('a chip is filled in four days, with its dates, its plan and its record', {
  timeout: 180_000,
}, async () => {
  const piece = await setUp();
  const place = here();
  await said('7–11 drops').waitFor();
  await said('11 laid level, about 8 with a usual mound, 7 with the highest').waitFor();
  await said('About 15 mm³ to fill. That is the smallest pool: 1 mL is plenty.').waitFor();
  await said('2–3 drops a day, at least 3 h apart').waitFor();
  await said('Last drop Wed 4 Mar to 9 Mar, by number and drops a day.').waitFor();
  await button('Take it into the plan').tap();
  await page.getByText('In the plan: drops, rest, levelling, sink check.').waitFor();
  await goTo(piece.replace('#/piece', '#/plan'));
  await heading('Steps').waitFor();
  const drops = section('Steps').locator('.plan-step', { hasText: 'Drop fill' });
  expect(await drops.count()).toBe(8);
  expect(await drops.first().textContent()).toContain('today');
  expect(await drops.last().textContent()).toContain('Thu 5 Mar'); // eight, two a day: a third would end after five
  const planned = (name: string) =>
    section('Steps').locator('.plan-step', { hasText: name }).last().textContent();
  expect(await planned('Level-sand')).toContain('19 Mar');
  expect(await planned('no more sinking')).toContain('26 Mar');

  await wakeAt(2, '09:10', place);
  await logDrop(1);
  await said('At least 3 h between drops: wait until today 12:10.').waitFor();
  // Six to ten are to come: it rests from the last of them, not from the first.
  await said('Last drop Wed 4 Mar to 9 Mar, by number and drops a day.').waitFor();
  await said('Level no earlier than 11 Mar; usual 18 Mar to 30 Mar; a deep fill until 8 Apr').waitFor();
  await wakeAt(2, '11:30', piece);
  await said('At least 3 h between drops: wait until today 12:10.').waitFor();
  await wakeAt(2, '14:00', place);
  await logDrop(2);
  await wakeAt(3, '09:10');
  await logDrop(3);
  await wakeAt(3, '14:00');
  await logDrop(4);
  for (const [day, clock, drop] of [
    [4, '09:10', 5],
    [4, '14:00', 6],
    [5, '09:10', 7],
    [5, '14:00', 8],
  ] as const) {
    await wakeAt(day, clock);
    await logDrop(drop);
  }
  await said('Level no earlier than 12 Mar; usual 19 Mar to 26 Mar; a deep fill until 4 Apr').waitFor();
  await said('Check for sinking a week after levelling.').waitFor();
  expect(await axeViolations()).toEqual([]);
  expect(await overTheSide()).toBe(0);

  await wakeAt(6, '09:00', piece);
  await said('The piece waits for Lower edge.').waitFor();
  await goTo(place, 'Lower edge');
  await link('Sand here').tap();
  await choose(/^Level/);
  await said(/Too early to level: .* not before Thu 12 Mar\./).waitFor();

  await wakeAt(23, '09:00', place);
  await link('Sand here').tap();
  await choose(/^Level/);
  expect(await page.getByText(/Too early to level/).count()).toBe(0);
  await button(/^Log/).first().tap();
  await title('Lower edge');
  await said('Check for sinking on 30 Mar, a week after levelling.').waitFor();

  await goTo(`${piece}/record`, 'Treatment record');
  await button('Save as a file').and(page.locator(':enabled')).waitFor({ timeout: 40_000 });
  const record = page.locator('article.record');
  expect(await record.locator('.record-zone h4').allTextContents()).toEqual(['1. Lower edge']);
  await record.getByText('Chip, 14 mm × 6 mm, 0.18 mm deep.').waitFor();
  await record.getByText('Clear only; colour untouched.').first().waitFor();
  await record
    .getByText(
      'Lower edge: Chip, 14 mm × 6 mm, 0.18 mm deep; 8 applications of Brush lacquer. Clear only; colour untouched.',
    )
    .waitFor();
  await record.getByText('21 °C, 48 % while coats went on.').waitFor();
  expect(await record.locator('.record-zone tbody tr').count()).toBe(8);
  expect(await axeViolations()).toEqual([]);
});
