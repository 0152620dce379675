import fc from 'fast-check';
import { afterAll, expect, test } from 'vitest';
import { checkPicture } from '../../src/logbook/picture/check-picture';
import { PHOTO_FAULTS } from '../../src/words/match/photo';
import { animated, heic, jpeg, NO_PHOTOS, png, turned } from './pictures';

let tried = 0;
let taken = 0;
afterAll(() => void process.stdout.write(`hostile pictures tried: ${tried}, taken as photos: ${taken}\n`));

const GOOD = [
  jpeg(1),
  jpeg(4),
  turned(jpeg(3), 6),
  png({ width: 20, height: 10 }),
  png({ width: 3, height: 3, frames: 3 }),
  animated(new Uint8Array(40), { width: 5, height: 5 }),
  heic(100, 100),
];
const MOST_PIXELS = 100_000_000;

/** What is taken has a size that a phone can hold; what is refused has its sentence. Nothing throws or goes on for ever. */
async function expectTakenOrTold(file: Uint8Array<ArrayBuffer>): Promise<void> {
  tried++;
  const start = process.cpuUsage(); // of its own work alone: a busy machine may make anything wait
  const checked = await checkPicture(new Blob([file]));
  if (checked.ok) {
    taken++;
    const pixels = checked.value.width * checked.value.height;
    expect(pixels > 0 && pixels <= MOST_PIXELS).toBe(true);
  } else expect(PHOTO_FAULTS[checked.failure]).toMatch(/\.$/);
  expect(process.cpuUsage(start).user).toBeLessThan(2_000_000); // microseconds
}

const spots = fc.array(
  fc.record({ at: fc.nat(), byte: fc.constantFrom(0, 1, 0x7f, 0x80, 0xd9, 0xda, 0xff) }),
  {
    minLength: 1,
    maxLength: 8,
  },
);

test('photos cut anywhere, with any bytes changed, and with others behind them', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...GOOD, ...Object.values(NO_PHOTOS)),
      spots,
      fc.nat(),
      fc.uint8Array({ maxLength: 60 }),
      async (good, changes, cut, more) => {
        const changed = good.slice();
        for (const { at, byte } of changes) changed[at % changed.length] = byte;
        await expectTakenOrTold(changed);
        await expectTakenOrTold(good.slice(0, cut % good.length));
        await expectTakenOrTold(new Uint8Array([...changed.slice(0, cut % good.length), ...more]));
      },
    ),
    { numRuns: 1_000 },
  );
});

test('any bytes behind the beginning of a photo', async () => {
  await fc.assert(
    fc.asyncProperty(
      fc.constantFrom(...GOOD),
      fc.nat({ max: 40 }),
      fc.uint8Array({ maxLength: 400 }),
      async (good, length, more) => {
        await expectTakenOrTold(new Uint8Array([...good.slice(0, length), ...more]));
      },
    ),
    { numRuns: 1_000 },
  );
});
