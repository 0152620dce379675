import type { Refused } from '../../actions/shop';
import type { Result } from '../../result';

/** A coat on every piece of a round, in order. What `laid` names is on already, so that one refused is sent again without doubling the others. */
export async function layRound(
  pieces: readonly string[],
  laid: Map<string, string>,
  layOn: (piece: string) => Promise<Result<{ readonly id: string }, Refused>>,
): Promise<Result<readonly string[], Refused>> {
  for (const piece of pieces) {
    if (laid.has(piece)) continue;
    const coat = await layOn(piece);
    if (!coat.ok) return coat;
    laid.set(piece, coat.value.id);
  }
  return { ok: true, value: pieces.map((piece) => laid.get(piece) ?? '') };
}
