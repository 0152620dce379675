import { MILESTONES } from '../../estimator/estimate';
import type { Shop } from '../../logbook/fold/fold';
import type { Piece } from '../../logbook/fold/piece/pieces';
import type { Standing } from '../../verdicts/standing';
import type { BandMs } from '../../words/times';
import { kept } from '../keep/kept-text';
import type { Outlook, PieceId } from '../outlook/outlook';
import type { WhichShop } from '../which-shop';

// What was last worked out and judged lies on this phone, so that the bench is right in its first frame.

/** As it is written: the piece's work, the verdict, the zero of the clock, the milestones, and a few looks at the film. */
export type KeptLine = readonly [
  key: string,
  standing: Standing,
  startMs: number,
  milestones: readonly (readonly (number | null)[])[],
  looks: readonly (readonly [timeS: number, ...layersUm: number[]])[],
];

export const KEPT_KEYS: Record<WhichShop, string> = {
  own: 'coatwait-standings',
  demo: 'coatwait-demo-standings',
};
export const UM = 1e-6;

/** A text that changes with the work on a piece: what was kept from before is not shown after it. */
export const workKey = ({ base, coats, sandings, checks, grounds }: Piece): string =>
  [base, coats.length, ...[coats, sandings, checks, grounds].map((work) => work.at(-1)?.id)].join();

type Kept = Extract<Outlook, { state: 'kept' }>;

/** What was kept for the pieces as they are now; nothing where the browser keeps nothing. */
export function keptStandings(which: WhichShop, { pieces }: Pick<Shop, 'pieces'>, nowMs: number) {
  const outlooks = new Map<PieceId, Outlook>();
  const standings = new Map<PieceId, Standing>();
  try {
    const lines = (kept(KEPT_KEYS[which]) ?? {}) as Record<PieceId, KeptLine>;
    for (const [id, line] of Object.entries(lines)) {
      const piece = pieces.get(id);
      if (!piece || workKey(piece) !== line[0]) continue;
      if (piece.coats.length > 0) outlooks.set(id, outlookFrom(line));
      standings.set(id, standingAt(line[1], nowMs));
    }
  } catch {
    // What lies there is not ours: it is worked out again.
  }
  return { outlooks, standings };
}

function outlookFrom([key, , startMs, bands, looks]: KeptLine): Kept {
  const milestones = Object.fromEntries(
    MILESTONES.map((name, i) => {
      const [earliestS, likelyS, lateS] = (bands[i] ?? []).map((s) => s ?? Number.POSITIVE_INFINITY);
      return [name, { earliestS, likelyS, lateS }];
    }),
  );
  const profiles = looks.map(([timeS, ...um]) => ({
    timeS,
    layers: um.flatMap((dry, i) => (i % 2 ? [] : [{ dryM: dry * UM, solventM: (um[i + 1] ?? 0) * UM }])),
  }));
  return { state: 'kept', estimate: { milestones, profiles } as unknown as Kept['estimate'], startMs, key };
}

/** A standing as time alone has changed it; what only the person can clear, stays. A time that was not reached is written as nothing. */
export function standingAt(standing: Standing, nowMs: number): Standing {
  const { verdict } = standing;
  if (!verdict?.until || verdict.word === 'hold') return standing;
  const { earliestMs, likelyMs } = unending(verdict.until);
  const word = nowMs < earliestMs ? 'wait' : nowMs < likelyMs ? 'perhaps' : 'ready';
  return {
    ...standing,
    ...(standing.moment && { moment: { ...standing.moment, ...unending(standing.moment) } }),
    verdict: { ...verdict, word, until: unending(verdict.until) },
  };
}

const unending = (band: BandMs): BandMs => ({
  earliestMs: band.earliestMs ?? Number.POSITIVE_INFINITY,
  likelyMs: band.likelyMs ?? Number.POSITIVE_INFINITY,
  lateMs: band.lateMs ?? Number.POSITIVE_INFINITY,
});
