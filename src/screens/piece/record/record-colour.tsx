import { useShop } from '../../../parts/frame/shop-context';
import { deltaE00 } from '../../../science/colour/delta-e-00';
import { targetOf } from '../../../shop/colour/aim';
import { readSurface } from '../../../shop/colour/surface';
import { standsOf } from '../../../shop/zone/stands';
import { tonerOn } from '../../../shop/zone/toner';
import { lightWords } from '../../../words/match/match';
import { RECORD as WORDS } from '../../../words/piece/record';
import { numberWords } from '../../../words/quantities';
import { usePiece } from '../use-piece';

const labWords = ({ L, a, b }: { readonly L: number; readonly a: number; readonly b: number }): string =>
  [L, a, b].map((value) => numberWords(value, 1)).join(' / ');

/** Target, last reading and difference of every colour matched for this piece, and of every toner on it. */
export function RecordColour() {
  const { shop } = useShop();
  const { piece } = usePiece();
  const lines = [...shop.value.matches.values()]
    .filter((match) => match.piece === piece.id)
    .flatMap((match) => {
      const target = targetOf(match).surface;
      const last = match.trials.findLast(({ readings }) => readings.length > 0);
      const read = last && readSurface(last.readings, match.white).surface;
      if (!target || !read) return [];
      const dE = deltaE00(read.lab, target.lab).toFixed(2);
      return [
        WORDS.colourLine(match.name, labWords(target.lab), labWords(read.lab), dE, lightWords(match.white)),
      ];
    });
  for (const { zone } of standsOf(piece, shop.value)) {
    const { target, rows, toner } = tonerOn(piece.id, zone?.zoneId, shop.value) ?? {};
    const last = rows?.findLast(({ isRead }) => isRead);
    if (!toner || !target || !last) continue;
    const of = WORDS.toned(zone?.name ?? WORDS.whole, last.passes);
    const [was, is] = [labWords(target), labWords(last.lab)];
    lines.push(WORDS.colourLine(of, was, is, last.dE00.toFixed(2), lightWords(toner.white)));
  }
  if (lines.length === 0) return null;
  return (
    <section>
      <h3>{WORDS.colour}</h3>
      {lines.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </section>
  );
}
