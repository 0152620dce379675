import { beforeEach, expect, test } from 'vitest';
import { type EntryBody, inItsVersion } from '../../../src/logbook/entry';
import { entry, fillJar, id, layCoat, PIECE, sand, startPiece } from '../../logbook/entries';
import { goTo, openApp, page } from '../app';
import { button } from '../on-screen';
import { photoWithPlace } from '../photo/tagged-photo';
import { isInside, overEachOther, read } from '../printed';
import { fillDatabases } from '../ten-years-in';

const CHIP = id(0xc1);
const EDGE = id(0xc2);
const mm = (text: string) => ({ text, unit: 'mm' }) as const;
const zone = (zoneId: string, name: string, more = {}): EntryBody => ({
  kind: 'zone-described',
  piece: PIECE,
  zoneId,
  name,
  is: 'chip',
  length: mm('14'),
  width: mm('6'),
  depth: mm('0.18'),
  ...more,
});
const HOURS_APART_MS = 4 * 3_600_000;
const WEEK_AGO_MS = Date.now() - 7 * 86_400_000;
const onZone = (zoneId: string): EntryBody =>
  ({ ...layCoat(), how: 'brush-fill', zoneId }) as unknown as EntryBody;
/** A treatment of many weeks, in more lines than a page takes. */
const BODIES: readonly EntryBody[] = [
  {
    ...startPiece(),
    name: 'Octave mandolin, restoration of the soundboard',
    note: 'Belongs to the museum.',
  } as EntryBody,
  fillJar(),
  zone(CHIP, 'Lower bout, treble side'),
  zone(EDGE, 'Upper edge behind the binding', {
    overspray: mm('60'),
    note: 'Worn by a strap, not by an accident.',
  }),
  ...Array.from({ length: 12 }, () => layCoat()),
  ...Array.from({ length: 9 }, () => onZone(CHIP)),
  ...Array.from({ length: 3 }, () => onZone(EDGE)),
  {
    kind: 'spot-tested',
    piece: PIECE,
    solvent: 'naphtha',
    dwell: { text: '60', unit: 's' },
    reading: 'nothing',
  },
  {
    kind: 'spot-tested',
    piece: PIECE,
    solvent: 'lacquer-thinner',
    dwell: { text: '20', unit: 's' },
    reading: 'smooths',
  },
  {
    kind: 'hold-overridden',
    piece: PIECE,
    rule: 'lead',
    act: 'scuff',
    reason: 'Wet methods alone, the owner was told in writing.',
  },
  {
    kind: 'piece-noted',
    piece: PIECE,
    text: 'The strap button was moved before the treatment began.',
    isPrivate: false,
  },
  sand(),
];

const wordsOf = (text: string): string[] => text.split(/\s+/).filter((word) => word !== '');

/** What is in the one and not in the other, each as often as it is missing. */
function lacking(all: readonly string[], from: readonly string[]): string[] {
  const left = [...from];
  return all.filter((word) => {
    const at = left.indexOf(word);
    if (at >= 0) left.splice(at, 1);
    return at < 0;
  });
}

beforeEach(async () => {
  await openApp();
  const entries = BODIES.map((body, n) => inItsVersion(entry(n + 1, body, WEEK_AGO_MS + n * HOURS_APART_MS)));
  await fillDatabases(page, entries, 0);
  await page.reload();
  await goTo(`#/piece/${PIECE}/photos`, 'Photos');
  const buffer = await photoWithPlace(1200, 900);
  for (let n = 1; n <= 5; n++) {
    await page.locator('input[type=file]').setInputFiles({ name: 'top.jpg', mimeType: 'image/jpeg', buffer });
    await page
      .locator('.photo-list li')
      .nth(n - 1)
      .locator('img')
      .waitFor();
  }
  await goTo(`#/piece/${PIECE}/record`, 'Treatment record');
  await expect.poll(() => page.locator('.record-photos image[href]').count()).toBe(5);
  await button('Save as a file').and(page.locator(':enabled')).waitFor({ timeout: 60_000 });
});

test('every word of the record is on the paper, whole, inside its margins and on its own place', {
  timeout: 180_000,
}, async () => {
  await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
  const said = wordsOf(await page.evaluate<string>("document.querySelector('article.record').innerText"));
  const heads = wordsOf((await page.locator('article.record th').allInnerTexts()).join(' '));
  expect(await page.locator('article.record').evaluate((one) => getComputedStyle(one).color)).toBe(
    'rgb(0, 0, 0)',
  );
  for (const format of ['A4', 'Letter']) {
    const { pages, words } = read(await page.pdf({ format }));
    expect(pages.length, format).toBeGreaterThan(2);
    expect(pages[0]?.[0], format).toBeCloseTo(format === 'A4' ? 595 : 612, -1);
    const printed = words.map(({ text }) => text);
    expect(lacking(said, printed), `${format}: not printed, or broken`).toEqual([]);
    const more = lacking(printed, said).filter((word) => !heads.includes(word));
    expect(more, `${format}: printed beside the record`).toEqual(['Treatment', 'record']);
    for (const word of words)
      expect(isInside(word, pages), `${format}, page ${word.page + 1}: “${word.text}” at ${word.box}`).toBe(
        true,
      );
    expect(overEachOther(words), `${format}: over each other`).toEqual([]);
  }
});
