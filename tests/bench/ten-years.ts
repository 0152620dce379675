import type { Entry, EntryBody } from '../../src/logbook/entry';

/** Every how many entries another piece is started: 400 pieces make 50,000. */
const ENTRIES_A_PIECE = 125;
const TEN_YEARS_MS = 10 * 365.25 * 86_400_000;
const STILL_OPEN = 12;

/** The n-th id of a ten-year logbook that was logged at that instant; it sorts by time. */
function idOf(n: number, atMs: number): string {
  const time = Math.floor(atMs).toString(16).padStart(12, '0');
  return `${time.slice(0, 8)}-${time.slice(8)}-7000-9000-${n.toString(16).padStart(12, '0')}`;
}
const um = (amount: number) => ({ text: String(amount), unit: 'um' }) as const;
const percent = (amount: number) => ({ text: String(amount), unit: '%' }) as const;
const grams = (amount: number) => ({ text: amount.toFixed(2), unit: 'g' }) as const;
const celsius = (amount: number) => ({ text: String(amount), unit: 'C' }) as const;

/** What was done for one piece: its jar, its mix, its coats with the air of each, checks, sandings, readings, and its closing. */
function piecework(n: number, newId: () => string): EntryBody[] {
  const [piece, jar, recipe, clear, tint, match, photo] = Array.from({ length: 7 }, newId) as [
    string,
    string,
    string,
    string,
    string,
    string,
    string,
  ];
  const lines = [clear, tint].map((ingredient) => ({
    ingredient,
    amount: { text: '50', unit: 'g' } as const,
  }));
  const lab = (L: number) => ({ text: L.toFixed(2), unit: 'ratio' }) as const;
  const bodies: EntryBody[] = [
    { kind: 'piece-started', piece, name: `Piece ${n}, walnut`, base: 'sealed', note: 'Lid only.' },
    { kind: 'ingredient-described', ingredient: clear, name: `Clear ${n}`, is: 'clear' },
    { kind: 'ingredient-described', ingredient: tint, name: `Tint ${n}`, is: 'tinter' },
    { kind: 'recipe-written', recipe, name: `Mix ${n}`, use: { as: 'clear' }, lines },
    { kind: 'card-photographed', recipe, photo },
    {
      kind: 'jar-filled',
      jar,
      name: `Gloss ${n}`,
      product: { finish: 'nitrocellulose', volumeSolids: percent(22) },
      thinner: { name: 'Thinner', blend: [{ solvent: 'toluene', share: 1 }] },
      thinning: { of: 'lacquer', percent: percent(50) },
    },
    {
      kind: 'match-described',
      match,
      name: `White ${n}`,
      place: 'open-panel',
      through: 'bare',
      white: 'D65/10',
      base: clear,
      tinters: [{ ingredient: tint }],
      division: grams(0.01),
      letDowns: [],
    },
  ];
  for (let coat = 0; coat < 25; coat++) {
    bodies.push(
      { kind: 'air-read', temperature: celsius(18 + (coat % 7)), humidity: percent(45), movement: 'gentle' },
      { kind: 'coat-laid', piece, jar, how: 'spray', film: { by: 'wet', wetFilm: um(80 + coat) } },
      { kind: 'checked', piece, test: 'print', result: coat % 3 ? 'passes' : 'fails' },
    );
    if (coat % 3 === 0) bodies.push({ kind: 'sanded', piece, removed: um(4), stage: 'scuff' });
  }
  for (let round = 0; round < 4; round++) {
    const weighUp = newId();
    const plan = [clear, tint].map((ingredient) => ({ ingredient, massKg: 0.05 }));
    bodies.push({ kind: 'weigh-up-begun', weighUp, recipe, plan, division: grams(0.01), isTared: true });
    for (const line of [0, 1]) bodies.push({ kind: 'poured', weighUp, line, scale: grams(50 + round / 100) });
  }
  for (let times = 0; bodies.length < ENTRIES_A_PIECE - 1; times++)
    bodies.push({
      kind: 'colour-read',
      match,
      of: { as: 'target' },
      white: 'D65/10',
      isDry: true,
      readings: [0, 1, 2].map((k) => ({
        as: 'lab',
        L: lab(90 + k / 10),
        a: lab(-0.5),
        b: lab(6 + times / 50),
      })),
    });
  bodies.push({ kind: 'piece-closed', piece });
  return bodies;
}

/** A logbook of so many entries over ten years up to `nowMs`, in the order logged; the last pieces are still open. */
export function tenYears(count: number, nowMs: number): Entry[] {
  const entries: Entry[] = [];
  const stepMs = TEN_YEARS_MS / count;
  let ids = 0;
  const pieces = Math.ceil(count / ENTRIES_A_PIECE);
  for (let n = 0; n < pieces; n++) {
    const isOpen = n >= pieces - STILL_OPEN;
    for (const body of piecework(n, () => idOf(ids++, nowMs - TEN_YEARS_MS))) {
      if (entries.length === count || (isOpen && body.kind === 'piece-closed')) continue;
      const atMs = Math.floor(nowMs - TEN_YEARS_MS + (entries.length + 1) * stepMs);
      const at = new Date(atMs).toISOString();
      entries.push({ id: idOf(ids++, atMs), v: 1, at, zone: 'Europe/Berlin', ...body } as Entry);
    }
  }
  return entries;
}
