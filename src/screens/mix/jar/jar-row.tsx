import type { Jar } from '../../../logbook/fold/mix/jars';
import { Row } from '../../../parts/blocks/row';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { jarAmount } from '../../../shop/jar/amount';
import { isPast, jarLife } from '../../../shop/jar/life';
import { FINISH_NAMES, JAR_WORDS } from '../../../words/mix/jar';
import { MIX_WORDS } from '../../../words/mix/mix';
import { dayWords, spanWords } from '../../../words/times';
import { volumeWords } from '../../../words/volumes';

/** A jar in a list: what it is, how much is left, and how long it keeps. */
export function JarRow({ jar }: { readonly jar: Jar }) {
  const { shop, nowMs } = useShop();
  const units = useUnits();
  const { leftM3 } = jarAmount(jar, shop.value);
  const finish = FINISH_NAMES[jar.product.finish].label;
  const parts = [
    ...(finish === jar.name ? [] : [finish]),
    leftM3 === undefined || jar.emptiedMs !== undefined
      ? MIX_WORDS.filled(dayWords(jar.filledMs, nowMs.value))
      : MIX_WORDS.left(volumeWords(leftM3, units)),
  ];
  return (
    <Row href={linkTo('mix', 'jar', jar.id)} title={jar.name} {...useLifeState(jar)}>
      <p class="quiet digits">{parts.join(' · ')}</p>
    </Row>
  );
}

/** What of its life is worth a word: a pot that counts down, or a life that is over. */
function useLifeState(jar: Jar) {
  const { shop, nowMs } = useShop();
  const life = jarLife(jar, shop.value);
  if (!life || jar.emptiedMs !== undefined) return {};
  const leftMs = life.endMs - nowMs.value;
  const name = JAR_WORDS.life[life.as];
  if (leftMs <= 0 && !isPast(jar, shop.value, nowMs.value)) return {};
  if (leftMs <= 0) return { state: { icon: 'stop', kind: 'stop', word: MIX_WORDS.lifeOver(name) } } as const;
  if (life.as === 'shelf') return {};
  return {
    state: { icon: 'waiting', kind: 'wait', word: MIX_WORDS.lifeLeft(name, spanWords(leftMs)) },
  } as const;
}
