import type { Shop } from '../../logbook/fold/fold';
import type { Jar } from '../../logbook/fold/mix/jars';
import type { Piece } from '../../logbook/fold/piece/pieces';
import type { CautionAct } from '../../logbook/kinds/shop/caution-acts';
import { cautionsFor } from '../../reminders/cautions';
import { DAY_MS, HOUR_MS } from '../../units';
import type { Caution } from '../../words/air/cautions';
import { jarHazards } from '../jar/hazards';

/** A session ends when nothing was laid or confirmed for so long (judgement, no source). */
const PAUSE_MS = 4 * HOUR_MS;
/** Nobody works on without such a pause for longer than this; what is older need not be sorted. */
const LONGEST_MS = 7 * DAY_MS;

/** When the session that is going on at an instant began; the instant itself where none is. */
export function sessionStartMs(
  { pieces, cautionsRead }: Pick<Shop, 'pieces' | 'cautionsRead'>,
  nowMs: number,
): number {
  const isOfThisWeek = (coat: { readonly atMs: number } | undefined): boolean =>
    coat !== undefined && coat.atMs > nowMs - LONGEST_MS;
  const coats = [...pieces.values()].flatMap((piece) =>
    isOfThisWeek(piece.coats.at(-1)) ? piece.coats : [],
  );
  const times = [...coats, ...cautionsRead]
    .map(({ atMs }) => atMs)
    .filter((atMs) => atMs <= nowMs && atMs > nowMs - LONGEST_MS);
  let startMs = nowMs;
  for (const atMs of times.sort((one, other) => other - one)) {
    if (startMs - atMs > PAUSE_MS) break;
    startMs = atMs;
  }
  return startMs;
}

/** Whether this jar was ever padded with oil: the rags heat themselves. */
const hasOilOnPad = (jar: string, { pieces }: Pick<Shop, 'pieces'>): boolean =>
  [...pieces.values()].some(({ coats }) => jarsOiled(coats).has(jar));

const oiled = new WeakMap<Piece['coats'], ReadonlySet<string>>();

/** The jars padded with oil in these coats; of ten years of coats only those of a piece that got one are looked at again. */
function jarsOiled(coats: Piece['coats']): ReadonlySet<string> {
  const known = oiled.get(coats);
  if (known) return known;
  const jars = new Set(coats.filter(({ how, oil }) => how === 'pad' && oil === true).map(({ jar }) => jar));
  oiled.set(coats, jars);
  return jars;
}

/**
 * The cautions to show before a jar is used: those for this act and these contents that were not confirmed in this session.
 * Another jar or way of laying brings only what is new in it; a new session brings all of them again.
 */
export function cautionsDue(shop: Shop, jar: Jar, act: CautionAct, nowMs: number): readonly Caution[] {
  const startMs = sessionStartMs(shop, nowMs);
  const confirmed = new Set(
    shop.cautionsRead
      .filter((read) => isOfOneKind(read.act, act) && read.atMs >= startMs)
      .flatMap(({ cautions }) => cautions),
  );
  const hazards = hasOilOnPad(jar.id, shop)
    ? [...jarHazards(jar, shop), 'oil' as const]
    : jarHazards(jar, shop);
  return cautionsFor(act, hazards, [...shop.silencedCautions]).filter(({ id }) => !confirmed.has(id));
}

const LAYING: readonly CautionAct[] = ['spray', 'brush'];

/** What was read before spraying need not be read again before a drop. */
const isOfOneKind = (read: CautionAct, act: CautionAct): boolean =>
  read === act || (LAYING.includes(read) && LAYING.includes(act));
