import { verdictFor } from '../../actions/verdicts/verdict-for';
import type { Verdict } from '../../verdicts/verdict';
import type { CoatDraft } from './coat-draft';

/** What the judge says of a coat on a piece. */
export interface JudgedCoat {
  readonly pieceId: string;
  readonly verdict: Verdict | undefined;
}

/** What the judge says of a coat as it is being said, on each piece of the round. */
export function verdictsOnCoat(
  open: Parameters<typeof verdictFor>[0],
  { piece, also, zone, jar: jarId, how: way }: CoatDraft,
): readonly JudgedCoat[] {
  const question = { act: way === 'flash' ? 'flash-coat' : 'coat', way, jarId } as const;
  const round = piece === undefined ? [] : [piece, ...also];
  return round.map((pieceId) => ({
    pieceId,
    verdict: verdictFor(open, pieceId === piece ? (zone ?? piece) : pieceId, question),
  }));
}
