import { useSignal } from '@preact/signals';
import { thinnerSorts } from '../../actions/mix/usual-jar';
import { finishTraits } from '../../estimator/finishes/traits';
import type { Jar } from '../../logbook/fold/mix/jars';
import { LinkButton } from '../../parts/blocks/button';
import { EmptyState } from '../../parts/blocks/empty-state';
import { Icon, type IconName } from '../../parts/blocks/icons';
import { Notice } from '../../parts/blocks/notice';
import { Page, Section } from '../../parts/blocks/page';
import { linkTo } from '../../parts/frame/route';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import { type BlushOutlook, blushOutlook } from '../../science/air/blush';
import type { LearnedBlush } from '../../science/air/learned-blush';
import { ownBlush } from '../../shop/air/blush-seen';
import { jarBlush, worstBlush } from '../../shop/air/jar-blush';
import type { MeasuredAir } from '../../shop/air/measured-air';
import { latestAir, woodMoisture } from '../../shop/air/measured-air';
import { shopLimits } from '../../shop/air/shop-limits';
import { HOUR_MS, toKelvin } from '../../units';
import { LIMIT_WORDS, OUTLOOK_WORDS, SLOWER_THINNER, AIR_WORDS as WORDS } from '../../words/air/air';
import { FINISH_NAMES } from '../../words/mix/jar';
import { differenceWords, percentWords, temperatureWords, type UnitSystem } from '../../words/quantities';
import { agoWords, whenWords } from '../../words/times';
import { Facts } from './facts';
import { Further } from './further';
import { JarOutlook } from './jar/jar-outlook';
import { jarsInUse } from './jar/jars-in-use';
import { LimitsCard } from './limits-card';
import { WhatHelps } from './what-helps';

/** A reading older than this says little of the air. */
const STALE_MS = 4 * HOUR_MS;
const STATE: Record<BlushOutlook, { icon: IconName; kind: 'ready' | 'wait' | 'stop' }> = {
  'below-floor': { icon: 'stop', kind: 'stop' },
  'expect-blush': { icon: 'stop', kind: 'stop' },
  care: { icon: 'caution', kind: 'wait' },
  easy: { icon: 'ready', kind: 'ready' },
};

/** The air of the last reading against the piece, and the way to everything else here. */
export function AirNow() {
  const shop = useShop().shop.value;
  const air = latestAir(shop);
  const learned = ownBlush(shop);
  const jars = jarsInUse(shop);
  const chosen = useSignal(jars[0]?.id);
  const jar = jars.find(({ id }) => id === chosen.value) ?? jars[0];
  const blushes = jar === undefined || finishTraits(jar.product.finish).blushes;
  return (
    <Page title={WORDS.title}>
      {air ? (
        <>
          <Now air={air} learned={learned} jar={jar} />
          {blushes && <WhatHelps air={air} limits={learned.limits} />}
          <JarOutlook
            air={air}
            jar={jar}
            onJar={(id) => {
              chosen.value = id;
            }}
          />
        </>
      ) : (
        <EmptyState title={WORDS.empty} text={WORDS.readFirst}>
          <LinkButton kind="main" icon="add" href={linkTo('air', 'read')}>
            {WORDS.read}
          </LinkButton>
        </EmptyState>
      )}
      <Further />
    </Page>
  );
}

interface NowProps {
  readonly air: MeasuredAir;
  readonly learned: LearnedBlush;
  /** What is laid next: advice is for its finish only. */
  readonly jar: Jar | undefined;
}

function Now({ air, learned, jar }: NowProps) {
  const units = useUnits();
  const { shop, nowMs: now } = useShop();
  const nowMs = now.value;
  const ageMs = nowMs - air.reading.atMs;
  const finish = jar?.product.finish ?? 'nitrocellulose';
  const limits = shopLimits(finish, air, shop.value.forecast);
  const { blushes } = finishTraits(finish);
  return (
    <Section title={WORDS.now}>
      <p class="quiet">{WORDS.of(`${whenWords(air.reading.atMs, nowMs)}, ${agoWords(ageMs)}`)}</p>
      {ageMs > STALE_MS && (
        <Notice kind="caution">
          <p>{WORDS.stale}</p>
        </Notice>
      )}
      {limits && <LimitsCard limits={limits} finish={FINISH_NAMES[finish].label.toLowerCase()} />}
      {blushes && (
        <BlushCard
          air={air}
          learned={learned}
          jar={jar}
          takesSlower={thinnerSorts(finish).includes('slow')}
        />
      )}
      <div class="acts">
        <LinkButton kind="main" icon="add" href={linkTo('air', 'read')} isWide>
          {WORDS.read}
        </LinkButton>
      </div>
      <Facts rows={factsOf(air, units)} />
      {blushes && <Limits learned={learned} units={units} />}
    </Section>
  );
}

/** How far the piece is above the dew point, and what to expect of it. */
function BlushCard({ air, learned, jar, takesSlower }: NowProps & { readonly takesSlower: boolean }) {
  const units = useUnits();
  const byMargin = blushOutlook(air.marginK, learned.limits);
  const outlook = worstBlush(byMargin, jar && jarBlush(jar, air)?.outlook);
  const { icon, kind } = STATE[outlook];
  const { word, text } = OUTLOOK_WORDS[outlook];
  return (
    <div class="margin-card" data-kind={kind}>
      <p class="margin-label">{WORDS.marginRow}</p>
      <p class="margin-value digits">{differenceWords(air.marginK, units)}</p>
      <p class="state" data-kind={kind}>
        <Icon name={icon} />
        {word}
      </p>
      <p>
        {text} {outlook === 'care' && takesSlower && SLOWER_THINNER}
      </p>
    </div>
  );
}

function factsOf(air: MeasuredAir, units: UnitSystem) {
  const { reading } = air;
  const wood = woodMoisture(air);
  const degrees = (C: number): string => temperatureWords(toKelvin(C), units);
  return [
    { label: WORDS.airRow, value: degrees(air.airC) },
    { label: WORDS.humidityRow, value: percentWords(air.humidity), note: humidityNote(air) },
    { label: WORDS.dewRow, value: degrees(air.dewPointC) },
    {
      label: WORDS.pieceRow,
      value: degrees(air.pieceC),
      note: reading.pieceTemperature ? undefined : WORDS.pieceAsAir,
    },
    ...(wood === undefined
      ? []
      : [{ label: WORDS.woodRow, value: percentWords(wood, 1), note: WORDS.woodHint }]),
  ];
}

function humidityNote({ reading }: MeasuredAir): string | undefined {
  if (reading.humidityFrom) return WORDS.worked[reading.humidityFrom.by];
  return reading.correction ? WORDS.corrected(`${reading.humidity.typed.text} %`) : undefined;
}

function Limits({ learned, units }: { readonly learned: LearnedBlush; readonly units: UnitSystem }) {
  const care = differenceWords(learned.limits.careK, units);
  const easy = differenceWords(learned.limits.easyK, units);
  return (
    <p class="quiet small">
      {learned.seen === 0
        ? `${LIMIT_WORDS.usual(care, easy)} ${LIMIT_WORDS.teach}`
        : LIMIT_WORDS.own(learned.seen, care, easy, differenceWords(learned.spreadK, units))}
    </p>
  );
}
