import { inject, test } from 'vitest';
import { clearJar } from '../../bench/clear-jar';
import { say } from '../../bench/clock';
import { launch, MOBILE } from '../browser';
import { fillDatabases, watchBench } from '../ten-years-in';

// Prints what test cards cost in the built app: the worker's time for a card of twelve weighings, and the bench with and without cards.
const base = inject('baseUrl');
const HOUR_MS = 3_600_000;
const STARTS = Number(process.env['STARTS'] ?? 7);
const CARDS = 2;
/** Hours after the last coat at which a card is weighed. */
const WEIGHED_H = [2, 6, 12, 24, 36, 48, 72, 96, 120, 144, 168, 192];

type Body = { readonly kind: string } & Record<string, unknown>;

/** Four pieces of six coats that went on nine days ago; beside the first of them so many cards that got its coats. */
function shopOf(cards: number, nowMs: number) {
  const rows: Body[] = [];
  let n = 0;
  const id = (): string => `00000000-0000-7000-8000-${(++n).toString(16).padStart(12, '0')}`;
  const add = (hoursAgo: number, body: Body): string => {
    const entry = {
      id: id(),
      v: 1,
      at: new Date(nowMs - hoursAgo * HOUR_MS).toISOString(),
      zone: 'UTC',
      ...body,
    };
    rows.push(entry);
    return entry.id;
  };
  const [jar, lastH] = [id(), 200];
  const film = { by: 'wet', wetFilm: { text: '85', unit: 'um' } } as const;
  const g = (text: string) => ({ text, unit: 'g' });
  add(lastH + 60, clearJar(jar));
  const made = Array.from({ length: cards }, id);
  const pieces = ['One', 'Two', 'Three', 'Four'].map((name) => {
    const piece = id();
    add(lastH + 50, { kind: 'piece-started', piece, name, base: 'sealed' });
    return piece;
  });
  for (const card of made)
    add(lastH + 40, {
      kind: 'card-made',
      card,
      piece: pieces[0],
      area: { text: '200', unit: 'cm2' },
      faces: 1,
      bare: g('1.000'),
      division: g('0.001'),
    });
  for (let coat = 0; coat < 6; coat++)
    for (const piece of pieces) {
      const laid = add(lastH + 4 * (5 - coat), { kind: 'coat-laid', piece, jar, how: 'spray', film });
      if (piece !== pieces[0]) continue;
      for (const card of made)
        add(lastH + 4 * (5 - coat), { kind: 'card-coated', card, coat: laid, jar, how: 'spray', film });
    }
  for (const card of made)
    for (const [k, hours] of WEIGHED_H.entries())
      add(lastH - hours, {
        kind: 'card-weighed',
        card,
        mass: g((2.93 - 0.012 * Math.log(1 + k)).toFixed(3)),
      });
  return rows;
}

/** What the page's worker was asked, and how long each took. */
interface Job {
  readonly kind: 'card' | 'estimate';
  readonly ms: number;
  readonly endMs: number;
}

const timeJobs = (): void => {
  const jobs: Job[] = [];
  (globalThis as unknown as { jobs: Job[] }).jobs = jobs;
  globalThis.Worker = class extends Worker {
    override postMessage(data: object): void {
      const from = performance.now();
      const kind = 'card' in data ? 'card' : 'estimate';
      const done = (): unknown => jobs.push({ kind, ms: performance.now() - from, endMs: performance.now() });
      this.addEventListener('message', done, { once: true });
      super.postMessage(data);
    }
  };
};

const middle = (values: readonly number[]): number =>
  values.toSorted((one, other) => one - other)[values.length >> 1] ?? Number.NaN;

test('what test cards cost', async () => {
  const browser = await launch();
  const cardMs: number[] = [];
  const starts: Record<'with' | 'without', { usableMs: number; standMs: number }[]> = {
    with: [],
    without: [],
  };
  for (let k = 0; k < STARTS; k++)
    for (const way of ['with', 'without'] as const) {
      const context = await browser.newContext(MOBILE);
      const first = await context.newPage();
      await first.goto(base);
      await first.getByRole('heading', { level: 1 }).waitFor();
      await fillDatabases(first, shopOf(way === 'with' ? CARDS : 0, Date.now()), 0);
      await first.close();
      const page = await context.newPage();
      await page.addInitScript(watchBench);
      await page.addInitScript(timeJobs);
      await page.goto(base);
      await page.waitForFunction(() => 'usableMs' in globalThis, undefined, { timeout: 60_000 });
      await page.waitForTimeout(8_000); // until nothing is worked out any more
      const { usableMs, jobs } = await page.evaluate(() => {
        const seen = globalThis as unknown as { usableMs: number; jobs: Job[] };
        return { usableMs: seen.usableMs, jobs: seen.jobs };
      });
      cardMs.push(...jobs.filter(({ kind }) => kind === 'card').map(({ ms }) => ms));
      const stand = jobs.filter(({ kind }) => kind === 'estimate').map(({ endMs }) => endMs);
      starts[way].push({ usableMs, standMs: Math.max(...stand) });
      await context.close();
    }
  await browser.close();
  say(
    `  a card of ${WEIGHED_H.length} weighings in the worker: ${cardMs.map((ms) => ms.toFixed(0)).join(', ')} ms, the middle one ${middle(cardMs).toFixed(0)}`,
  );
  for (const of of ['usableMs', 'standMs'] as const) {
    const [withCards, without] = [
      middle(starts.with.map((one) => one[of])),
      middle(starts.without.map((one) => one[of])),
    ];
    say(
      `  ${of === 'usableMs' ? 'bench usable' : 'every time worked out'}: ${withCards.toFixed(0)} ms with ${CARDS} cards, ${without.toFixed(0)} ms without, ratio ${(withCards / without).toFixed(2)}`,
    );
  }
});
