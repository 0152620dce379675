import type { Jar } from '../../../logbook/fold/mix/jars';
import { LinkButton } from '../../../parts/blocks/button';
import { Notice } from '../../../parts/blocks/notice';
import { Section } from '../../../parts/blocks/page';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { type JarAmount, jarAmount } from '../../../shop/jar/amount';
import { JAR_WORDS as WORDS } from '../../../words/mix/jar';
import { CORRECT_WORDS } from '../../../words/piece/coat/correct';
import { numberWords, percentWords, type UnitSystem } from '../../../words/quantities';
import { volumeWords } from '../../../words/volumes';
import { DrawForm, WeighForm } from './left-forms';

const SEEN_M3 = 1e-9;

/** How much the jar still holds, and what sets that right. */
export function Left({ jar }: { readonly jar: Jar }) {
  const { shop } = useShop();
  const units = useUnits();
  if (jar.emptiedMs !== undefined) return null;
  const amount = jarAmount(jar, shop.value);
  const weighing = jar.weighings.at(-1);
  return (
    <Section title={WORDS.left}>
      <Figure amount={amount} />
      {notes(amount, units).map((note) => (
        <p key={note} class="quiet digits">
          {note}
        </p>
      ))}
      {amount.doubt && <Notice kind="caution">{WORDS.doubts[amount.doubt]}</Notice>}
      {weighing && (
        <LinkButton href={linkTo('mix', 'correct', weighing.id)}>
          {CORRECT_WORDS.lines['jar-weighed']}
        </LinkButton>
      )}
      <div class="set-right">
        <WeighForm jar={jar} />
        <DrawForm jar={jar} />
      </div>
    </Section>
  );
}

function Figure({ amount: { leftM3, densityKgM3, keepBackM3 } }: { readonly amount: JarAmount }) {
  const units = useUnits();
  if (leftM3 === undefined) return <p>{WORDS.leftUnknown}</p>;
  const isLow = keepBackM3 > 0 && leftM3 <= keepBackM3 + SEEN_M3;
  return (
    <>
      <p class="outcome-figure digits">
        {WORDS.leftFigure(volumeWords(leftM3, units), numberWords(leftM3 * densityKgM3 * 1000, 0))}
      </p>
      {isLow && <Notice kind="caution">{WORDS.isLow}</Notice>}
    </>
  );
}

function notes(amount: JarAmount, units: UnitSystem): string[] {
  const { keepBackM3, laidM3, uncountedCoats, evaporatedKg, volumeSolids } = amount;
  const all: string[] = [];
  if (keepBackM3 > 0) all.push(WORDS.keptBack(volumeWords(keepBackM3, units)));
  if (laidM3 > 0) all.push(WORDS.laid(volumeWords(laidM3, units)));
  if (uncountedCoats > 0) all.push(WORDS.uncounted(uncountedCoats));
  if (evaporatedKg > 0)
    all.push(
      WORDS.evaporated(numberWords(evaporatedKg * 1000, 1)),
      WORDS.solidsNow(percentWords(volumeSolids, 1)),
    );
  return all;
}
