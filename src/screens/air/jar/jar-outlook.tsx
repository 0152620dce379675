import type { Jar } from '../../../logbook/fold/mix/jars';
import { Fold } from '../../../parts/blocks/fold';
import { Icon, type IconName } from '../../../parts/blocks/icons';
import { Choice } from '../../../parts/fields/choice';
import { named } from '../../../parts/fields/select-field';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { type JarBlushOutlook, jarBlush } from '../../../shop/air/jar-blush';
import type { MeasuredAir } from '../../../shop/air/measured-air';
import { jarFilm } from '../../../shop/jar/film';
import { toKelvin } from '../../../units';
import { JAR_BLUSH_WORDS as WORDS } from '../../../words/air/air';
import { FINISH_WORDS } from '../../../words/air/finishes';
import { differenceWords, temperatureWords } from '../../../words/quantities';
import { jarsInUse } from './jars-in-use';

const STATE: Record<JarBlushOutlook, { icon: IconName; kind: 'ready' | 'wait' | 'stop' }> = {
  'stays-clear': { icon: 'ready', kind: 'ready' },
  'may-blush': { icon: 'caution', kind: 'wait' },
  blushes: { icon: 'stop', kind: 'stop' },
};

interface JarOutlookProps {
  readonly air: MeasuredAir;
  readonly jar: Jar | undefined;
  readonly onJar: (id: string) => void;
}

/** How cold a film of the chosen jar gets, against the dew point. */
export function JarOutlook({ air, jar, onJar }: JarOutlookProps) {
  const jars = jarsInUse(useShop().shop.value);
  const blush = jar && jarBlush(jar, air);
  return (
    <Fold title={WORDS.title} brief={blush && WORDS[blush.outlook]}>
      {jar === undefined && <p>{WORDS.none}</p>}
      {jars.length > 1 && (
        <div class="wide-tiles">
          <Choice label={WORDS.choose} options={named(jars)} value={jar?.id} onChange={onJar} />
        </div>
      )}
      {jar && <OfJar jar={jar} air={air} />}
    </Fold>
  );
}

function OfJar({ jar, air }: { readonly jar: Jar; readonly air: MeasuredAir }) {
  const units = useUnits();
  const blush = jarBlush(jar, air);
  if (!blush) return <p>{FINISH_WORDS.texts[jar.product.finish]}</p>;
  const { icon, kind } = STATE[blush.outlook];
  const degrees = (C: number): string => temperatureWords(toKelvin(C), units);
  return (
    <>
      <p class="state" data-kind={kind}>
        <Icon name={icon} />
        {WORDS[blush.outlook]}
      </p>
      <p>
        {WORDS.cools(
          jar.name,
          differenceWords(blush.coolsFromK, units),
          differenceWords(blush.coolsToK, units),
        )}{' '}
        {WORDS.film(degrees(blush.filmLowestC), degrees(blush.filmHighestC), degrees(air.dewPointC))}
      </p>
      <p class="quiet small">
        {WORDS.how} {jarFilm(jar).ownSolvents === 'common-practice' && WORDS.unknownOwn}
      </p>
    </>
  );
}
