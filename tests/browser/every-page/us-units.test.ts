import { expect, test } from 'vitest';
import { goTo, page } from '../app';
import { inUsUnits, unfoldAll } from '../on-screen';
import { lookAtEach, MANY_SCREENS, openDemo } from './each-screen';

// A shop that works in US units reads US units: what is metric alone, anywhere in the demo shop, is a leak.

/** A metric figure, and what a US shop must find in the same line. Grams stay grams: a pocket scale shows nothing else. */
const METRIC: readonly (readonly [metric: RegExp, us: RegExp])[] = [
  [/(?<![\w-])\d[\d.,]*\s?(°C|K)(?![\w/-])/, /\d\s°F/],
  [/\d\s?µm\b/, /\d\smil\b/],
  [/\d\s?(mL|L)(?![\w/])/, /(fl oz|gallons?|quarts?|lb cut)\b/],
  [/\d\s?[cm]?m²(?!\/)/, /(ft²|in²)/],
  [/\d\s?(mm|cm|m|metres)(?![\w²³/])/, /(\d|½)\s(in|ft|mil)\b/],
  [/\d\s?m³/, /(ft³|cfm)/],
  [/\d\s?mm³/, /(in³|fl oz)/],
  [/\d\s?(g\/L|g\/mL|kg\/m³)/, /(lb\/gal|lb cut)/],
  [/\d\s?m²\/L/, /ft²\/gal/],
  [/\d\s?(mm²\/s|mPa·s)/, /(cSt|cP)/],
];
/** What a standard calls its cups. */
const NAMES = [/^(ISO 2431|DIN 53211), \d mm$/];

const isLeak = (line: string): boolean =>
  !NAMES.some((name) => name.test(line)) &&
  METRIC.some(([metric, us]) => metric.test(line) && !us.test(line));

/** What is read on the screen, line by line: text, what fields hint at, what a screen reader says, what lists offer. */
async function lines(): Promise<string[]> {
  // biome-ignore lint/performance/useDomNodeTextContent: only the drawn text comes in lines
  const seen = await page.locator('body').innerText();
  const said = await page
    .locator('body *')
    .evaluateAll((all) =>
      all.flatMap((one) => [
        ...['aria-label', 'placeholder', 'title'].map((name) => one.getAttribute(name) ?? ''),
        one.matches('svg text, svg title, svg desc, option, .heard') ? (one.textContent ?? '') : '',
      ]),
    );
  // The range of a field that is typed in a metric unit, by choice or as last time, is told in that unit.
  const ranges = await page.locator('.field:has(.units) .hint').allInnerTexts();
  return [...seen.split('\n').filter((line) => !ranges.includes(line)), ...said].filter(
    (line) => line.trim() !== '',
  );
}

test('no screen speaks metric alone to a shop that works in US units', async () => {
  await openDemo();
  await inUsUnits();
  const leaks = new Set<string>();
  const look = async (kind: string): Promise<void> => {
    await page.waitForTimeout(150); // what is worked out behind the page
    for (const line of await lines()) if (isLeak(line)) leaks.add(`${kind}: ${line.slice(0, 240)}`);
  };
  const kinds = await lookAtEach(look);
  // The walk sees one of each kind; pieces and their places differ in what was done to them.
  const behind = (start: string): Promise<string[]> =>
    page
      .locator(`main a[href^="${start}"]`)
      .evaluateAll((all) => all.map((one) => one.getAttribute('href') ?? ''));
  await goTo('#/bench');
  for (const piece of new Set(await behind('#/piece/'))) {
    await goTo(piece);
    await unfoldAll();
    await look(piece);
    for (const zone of await behind(`${piece}/zone/`)) {
      await goTo(zone);
      await look(zone);
    }
  }
  expect(kinds.length).toBeGreaterThan(MANY_SCREENS);
  expect([...leaks]).toEqual([]);
}, 200_000);

test('a metric figure alone is found, one with its US figure beside it is not', () => {
  const alone = [
    'Sprayed, 85 µm wet',
    '21 °C by day',
    'Have 2 mL ready.',
    '3 K',
    '683 g/L',
    '40 m³',
    '14 mm × 6 mm',
  ];
  const told = [
    '85 µm (3.3 mil) wet',
    '21 °C (70 °F)',
    '1 fl oz (30 mL)',
    'Jar 70K-KS3',
    'DIN 53211, 4 mm',
    '200 g',
  ];
  expect(alone.filter(isLeak)).toEqual(alone);
  expect(told.filter(isLeak)).toEqual([]);
});
