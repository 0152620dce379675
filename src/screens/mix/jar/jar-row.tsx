import type { Jar } from '../../../logbook/fold/jars';
import { linkTo } from '../../../parts/route';
import { Row } from '../../../parts/row';
import { useShop } from '../../../parts/shop-context';
import { MIX_WORDS } from '../../../words/mix';
import { FINISH_NAMES } from '../../../words/mix-jar';
import { dayWords } from '../../../words/times';

/** A jar in a list. */
export function JarRow({ jar }: { readonly jar: Jar }) {
  const { nowMs } = useShop();
  return (
    <Row href={linkTo('mix', 'jar', jar.id)} title={jar.name}>
      <p class="quiet">
        {FINISH_NAMES[jar.product.finish].label} · {MIX_WORDS.filled(dayWords(jar.filledMs, nowMs.value))}
      </p>
    </Row>
  );
}
