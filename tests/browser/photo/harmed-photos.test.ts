import { describe, expect, test } from 'vitest';
import { PHOTO_FAULTS } from '../../../src/words/match/photo';
import { jpeg, png, turned } from '../../hostile/pictures';
import { base, kept, NAMES, PLACES, page } from './photo-places';
import { bringPictures, chooseEach, photoAs, type Trial } from './photo-trials';

// So many harmed files for each of the two places that take photos; `PHOTOS=5000` for a long run.
const TRIALS = Number(process.env['PHOTOS'] ?? 150);
const TYPES = ['image/jpeg', 'image/png', 'image/svg+xml', 'text/html', ''];
const pick = <Value>(from: readonly Value[]): Value => from[Math.floor(Math.random() * from.length)] as Value;
const upTo = (most: number): number => Math.floor(Math.random() * most);

/** A photo cut short, or with bytes changed in it, or both. */
function harm(picture: number, bytes: number): Trial {
  const isCut = Math.random() < 0.5;
  const isChanged = !isCut || Math.random() < 0.3;
  const changes = Array.from({ length: 1 + upTo(6) }, () => ({ at: upTo(bytes), byte: upTo(256) }));
  return {
    picture,
    ...(isCut && { cut: upTo(bytes) }),
    ...(isChanged && { changes }),
    name: pick(NAMES),
    type: pick(TYPES),
  };
}

describe.each(PLACES)('$place', ({ place, go }) => {
  test(
    `${TRIALS} harmed photos: each is taken whole, or told why not`,
    async () => {
      const done = await go();
      const pictures = [
        ...(await Promise.all(['image/jpeg', 'image/png', 'image/webp'].map((type) => photoAs(page, type)))),
        jpeg(4),
        png({ width: 64, height: 48, frames: 3 }),
        turned(jpeg(3), 6),
      ];
      await bringPictures(page, pictures);
      const sentences: readonly string[] = Object.values(PHOTO_FAULTS);
      const counts = new Map<string, number>();
      for (let left = TRIALS; left > 0; left -= 50) {
        const trials = Array.from({ length: Math.min(50, left) }, () => {
          const picture = upTo(pictures.length);
          return harm(picture, pictures[picture]?.length ?? 0);
        });
        const said = await chooseEach(page, trials, done);
        for (const [i, one] of said.entries()) {
          expect([...sentences, 'taken'], JSON.stringify(trials[i])).toContain(one);
          counts.set(one, (counts.get(one) ?? 0) + 1);
        }
      }
      console.log(`${place}: ${TRIALS} harmed files`, Object.fromEntries(counts));
      expect(counts.size).toBeGreaterThan(1);
      const taken = counts.get('taken') ?? 0;
      if (done.isAdded) expect(await kept()).toEqual({ photos: taken, entries: taken });
      await page.goto(`${base}#/bench`);
      await page.getByRole('heading', { level: 1 }).waitFor();
    },
    60_000 + TRIALS * 6_000,
  );
});
