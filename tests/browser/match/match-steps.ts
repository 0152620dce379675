import { base, here, page } from '../app';
import { button, choose, field, title } from '../on-screen';

export type Lab = readonly [L: string, a: string, b: string];

export const tick = (name: string | RegExp) => page.getByRole('checkbox', { name }).tap();

export const says = (text: string | RegExp) => page.getByText(text).first().waitFor();

export interface Start {
  readonly tinters: readonly string[];
  readonly isThroughClear?: boolean;
  readonly light?: string;
}

export async function startMatch({
  tinters,
  isThroughClear = false,
  light = 'D65/10',
}: Start): Promise<string> {
  await page.goto(`${base}#/match/new`);
  await field('Name').fill('Radio cabinet');
  await choose(/^Edge/);
  if (isThroughClear) await choose(/^Through clear/);
  await page.getByRole('combobox', { name: /^Light and observer/ }).selectOption(light);
  for (const name of tinters) await tick(new RegExp(`^${name}`));
  await choose(/^10 % and 1 %/);
  await button('Start the match').tap();
  await title('Radio cabinet');
  return here();
}

export async function typeReadings(readings: readonly Lab[]): Promise<void> {
  for (const [i, lab] of readings.entries()) {
    if (i > 0) await button('Another reading').tap();
    const row = page.getByRole('group', { name: `Reading ${i + 1}`, exact: true });
    for (const [k, name] of ['L*', 'a*', 'b*'].entries())
      await row.getByRole('textbox', { name, exact: true }).fill(lab[k] ?? '');
  }
}

export async function logReadings(readings: readonly Lab[]): Promise<void> {
  await typeReadings(readings);
  await button('Log the reading').tap();
  await title('Radio cabinet');
}

export async function mix(amounts: Readonly<Record<string, string>>): Promise<void> {
  for (const [name, grams] of Object.entries(amounts)) await field(`${name}, g`).fill(grams);
  await button('Log this trial').tap();
  await title('Radio cabinet');
}

export const thrice = (lab: Lab): Lab[] => [lab, lab, lab];
