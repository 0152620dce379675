import { mkdirSync, writeFileSync } from 'node:fs';
import { converter } from 'culori';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
import { serveInFolder } from '../frame/static-host';
import { byHand } from './by-hand';
import { type Engine, openChromium, openFirefox, openWebKit } from './engine';
import { drawCard, type Rgb, readPhoto } from './read-photo';

const ENGINES = [
  { name: 'Chromium', open: openChromium },
  { name: 'Firefox', open: openFirefox },
  { name: 'WebKit', open: openWebKit },
];
/** An old white beside a card of 18 %: its sRGB level by IEC 61966-2-1 is 118 (0.181). */
const CARD: Rgb = [118, 118, 118];
const SAMPLE: Rgb = [214, 196, 160];
let host: Awaited<ReturnType<typeof serveInFolder>>;
let backup: string | undefined;
const digits: (readonly string[] | null)[] = [];
let engine: Engine | undefined;
beforeAll(async () => {
  host = await serveInFolder();
});
afterEach(async ({ task }) => {
  if (process.env['SHOTS'] || task.result?.state === 'fail') await keepPicture(task.name);
  await engine?.close();
  engine = undefined;
});
afterAll(() => host.close());

async function keepPicture(name: string): Promise<void> {
  const picture = await engine?.picture().catch(() => undefined);
  mkdirSync('shots', { recursive: true });
  if (picture) writeFileSync(`shots/engine-${name.replace(/\W+/g, '-')}.png`, picture);
}

/** How long each step took here, 300 ms for every change of page among it; printed, never judged. */
function stepTimes() {
  const took: string[] = [];
  return {
    async step<Value>(name: string, act: () => Promise<Value>): Promise<Value> {
      const startMs = performance.now();
      const done = await act();
      took.push(`${name} ${Math.round(performance.now() - startMs)}`);
      return done;
    },
    say: () => took.join(', '),
  };
}

describe.each(ENGINES)('in $name', ({ name, open }) => {
  test(`the main job, without a network, and a backup out and in: ${name}`, async () => {
    engine = await open();
    const { tap, fill, see, seeOne, to, isKept, saved, give, canKeepBlob } = byHand(engine);
    const { step, say } = stepTimes();
    await step('first start', async () => {
      await engine?.goTo(host.address);
      await see('Nothing on the bench yet');
    });
    await step('kept for offline', isKept);
    await step('piece', async () => {
      await to('#/piece/new');
      await fill('Name', 'Small box');
      await tap('Start this piece');
      await see('Ready for');
    });
    const piece = await engine.run<string>('return location.hash;');
    await step('jar', async () => {
      await to('#/mix/jar/new');
      await fill('Name of the jar', 'Clear gloss');
      await tap('Fill the jar');
      await see('Clear gloss is filled.');
    });
    await step('coat', async () => {
      await to('#/lay');
      if ((await seeOne('Read and done', 'Log it')) === 'Read and done') await tap('Read and done');
      await tap('Log it');
      await see('Coat 1 logged on Small box.');
    });
    await step('times', async () => {
      await to('#/bench');
      await see('Small box');
      await see('ecoat'); // the estimator's worker has answered with a band
    });
    await step('photo of the piece', async () => {
      await to(`${piece}/photos`);
      await see('Take or choose a photo');
      await give(await drawCard(engine as Engine, CARD, SAMPLE), 'box.jpg', 'image/jpeg');
      await see('Photo saved.');
    });
    await step('start without a network', async () => {
      host.pause();
      await engine?.goTo(`${host.address}?again`);
      await see('Small box');
      host.goOn();
    });
    await to('#/more');
    if (backup !== undefined)
      await step('restore', async () => {
        await give(backup as string, 'backup.zip', 'application/zip'); // from the engine before
        expect(await see('restored.')).toMatch(/entries and [12] photos? restored/); // one more by each engine
      });
    await step('backup', async () => {
      backup = await saved('Save a backup');
    });
    expect(atob(backup ?? '').startsWith('PK')).toBe(true);
    // WebKit under automation is a private window: it refuses a Blob, and keeps the photo all the same.
    expect(await canKeepBlob()).toBe(name !== 'WebKit');
    await tap('Demo shop');
    await tap('Open the demo shop');
    await see('All invented.');
    await step('match', async () => {
      await to('#/match');
      await tap('Tea caddy, old white');
      await see('Add, and stir in'); // the advice is worked out in a worker, and comes last
      const read = async () => (await see('ΔE00')).match(/[\d.,\u2212]+(?=\s|$)/gm);
      const later = () => new Promise((resolve) => setTimeout(resolve, 500)).then(read);
      let said = await read();
      // Until nothing more comes in: what a worker works out is on its way when the page stands.
      for (let next = await later(); next?.join() !== said?.join(); next = await later()) said = next;
      digits.push(said);
    });
    expect(digits.at(-1)?.length).toBeGreaterThan(8);
    expect(digits.at(-1)).toEqual(digits[0]); // every engine works out the same digits
    const lab = await step('photo read', () => readPhoto(engine as Engine, CARD, SAMPLE));
    const { l, a, b } = converter('lab65')({
      mode: 'rgb',
      r: SAMPLE[0] / 255,
      g: SAMPLE[1] / 255,
      b: SAMPLE[2] / 255,
    });
    for (const [i, expected] of [l, a, b].entries())
      expect(Math.abs((lab[i] ?? Number.NaN) - expected)).toBeLessThan(1); // JPEG rounds a level: 0.4 at most here
    console.log(`${name} reads the photo as ${lab.join(' / ')}; ms: ${say()}`);
  });
});
