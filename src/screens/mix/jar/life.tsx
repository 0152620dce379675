import { testJar } from '../../../actions/mix/jar';
import type { Jar } from '../../../logbook/fold/mix/jars';
import { Button } from '../../../parts/blocks/button';
import { Notice } from '../../../parts/blocks/notice';
import { Section } from '../../../parts/blocks/page';
import { Refusal } from '../../../parts/fields/form/refusal';
import { useForm } from '../../../parts/fields/form/use-form';
import { typedWords } from '../../../parts/fields/typed-words';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { glassPlate, type JarLife, jarLife } from '../../../shop/jar/life';
import { JAR_WORDS as WORDS } from '../../../words/mix/jar';
import { dateWords, spanWords, whenWords } from '../../../words/times';

const WORTH_SAYING = 0.05;

/** How long the jar keeps, in the air it stood in. */
export function Life({ jar }: { readonly jar: Jar }) {
  const { shop, nowMs } = useShop();
  const units = useUnits();
  const life = jarLife(jar, shop.value);
  if (!life || jar.emptiedMs !== undefined) return null;
  const leftMs = life.endMs - nowMs.value;
  return (
    <Section title={WORDS.life[life.as]}>
      {leftMs <= 0 ? (
        <Over jar={jar} life={life} />
      ) : (
        <p class="outcome-figure digits">{WORDS.leftOfLife(spanWords(leftMs))}</p>
      )}
      <p class="digits">{WORDS.until(endWords(life, life.endMs, nowMs.value))}</p>
      {life.sheet && (
        <p class="digits">
          {WORDS.lifeFromSheet(
            typedWords(life.sheet.potLife.typed, units),
            typedWords(life.sheet.temperature.typed, units),
          )}
        </p>
      )}
      <Warmth life={life} />
      <p class="quiet small">{WORDS.lifeText(units)}</p>
    </Section>
  );
}

/** Its time is over: what to do before it is used, and for shellac the test that says whether it still dries. */
function Over({ jar, life }: { readonly jar: Jar; readonly life: JarLife }) {
  if (jar.product.finish === 'shellac') return <GlassPlate jar={jar} />;
  return <Notice kind={life.as === 'pot' ? 'stop' : 'caution'}>{WORDS.over[life.as]}</Notice>;
}

const RESULTS = ['passes', 'fails'] as const;

function GlassPlate({ jar }: { readonly jar: Jar }) {
  const { needs, actions, nowMs } = useShop();
  const form = useForm();
  const found = glassPlate(jar);
  const log = async (result: (typeof RESULTS)[number]): Promise<void> => {
    const tested = await form.send(true, () => testJar(needs, { jar: jar.id, test: 'glass-plate', result }));
    if (tested) showToast({ text: WORDS.tested, onUndo: () => void actions.undo(tested.id) });
  };
  return (
    <>
      <Notice kind="caution">
        <p>
          <strong>{WORDS.plateTitle}</strong>
        </p>
        <p>{found ? WORDS.plateFound[found.result](whenWords(found.atMs, nowMs.value)) : WORDS.plateText}</p>
      </Notice>
      <Refusal refused={form.refused.value} />
      <div class="acts">
        {RESULTS.map((result) => (
          <Button key={result} onClick={() => void log(result)}>
            {result === 'passes' ? WORDS.platePasses : WORDS.plateFails}
          </Button>
        ))}
      </div>
    </>
  );
}

/** An end to the minute for a pot, to the day for a shelf. */
const endWords = ({ as }: Pick<JarLife, 'as'>, atMs: number, nowMs: number): string =>
  as === 'pot' ? whenWords(atMs, nowMs) : dateWords(atMs, nowMs);

function Warmth({ life }: { readonly life: JarLife }) {
  const { nowMs } = useShop();
  const units = useUnits();
  const span = life.coolEndMs - life.fromMs;
  const shift = (life.endMs - life.coolEndMs) / span;
  if (Math.abs(shift) < WORTH_SAYING) return null;
  const cool = endWords(life, life.coolEndMs, nowMs.value);
  return <p class="digits">{shift < 0 ? WORDS.warm(units, cool) : WORDS.cool(units, cool)}</p>;
}
