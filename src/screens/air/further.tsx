import type { Shop } from '../../logbook/fold/fold';
import { Section } from '../../parts/blocks/page';
import { Row, type RowProps } from '../../parts/blocks/row';
import { typedWords } from '../../parts/fields/typed-words';
import { linkTo } from '../../parts/frame/route';
import { useShop, useUnits } from '../../parts/frame/shop-context';
import { filterClock, filtersInUse } from '../../shop/air/filter-clock';
import { dayEndRead, isDayEndDue } from '../../shop/cautions/day-end-due';
import { FORECAST_WORDS, READINGS_WORDS, AIR_WORDS as WORDS } from '../../words/air/air';
import { ROOM_WORDS } from '../../words/air/room';
import type { UnitSystem } from '../../words/quantities';

/** The way to everything else of air, breath and fire. */
export function Further() {
  const { shop, nowMs } = useShop();
  const now = shop.value;
  const units = useUnits();
  return (
    <Section title={WORDS.more}>
      <ul class="rows">
        <Row {...dayEnd(now, nowMs.value)} />
        {now.airReadings.length > 0 && (
          <Row href={linkTo('air', 'readings')} title={READINGS_WORDS.title}>
            <p class="quiet">{READINGS_WORDS.count(now.airReadings.length)}</p>
          </Row>
        )}
        <Row href={linkTo('air', 'forecast')} title={WORDS.forecast}>
          <p class="quiet">{forecastLine(now, units)}</p>
        </Row>
        <Row href={linkTo('air', 'room')} title={WORDS.room}>
          <p class="quiet">{now.room ? roomLine(now.room, units) : WORDS.roomNone}</p>
        </Row>
        <Row {...filters(now, nowMs.value)} />
        <Row href={linkTo('air', 'cautions')} title={WORDS.cautions}>
          <p class="quiet">{WORDS.cautionsHint}</p>
        </Row>
        <Row href={linkTo('air', 'finishes')} title={WORDS.finishes}>
          <p class="quiet">{WORDS.finishesHint}</p>
        </Row>
        <Row href={linkTo('air', 'old')} title={WORDS.oldFinish}>
          <p class="quiet">{WORDS.oldFinishHint}</p>
        </Row>
      </ul>
    </Section>
  );
}

function dayEnd(shop: Shop, nowMs: number): RowProps {
  const row = { href: linkTo('air', 'day-end'), title: WORDS.dayEnd };
  if (isDayEndDue(shop, nowMs))
    return { ...row, state: { icon: 'fire', word: WORDS.dayEndDue, kind: 'wait' } };
  if (dayEndRead(shop, nowMs))
    return { ...row, state: { icon: 'ready', word: WORDS.dayEndDone, kind: 'quiet' } };
  return { ...row, children: <p class="quiet">{WORDS.dayEndHint}</p> };
}

function filters({ filters: all }: Shop, nowMs: number): RowProps {
  const row = { href: linkTo('air', 'filters'), title: WORDS.filters };
  const inUse = filtersInUse(all);
  const due = inUse.filter((filter) => filterClock(filter, nowMs).state === 'due').length;
  if (due > 0) return { ...row, state: { icon: 'stop', word: WORDS.filtersDue(due), kind: 'stop' } };
  const line = inUse.length === 0 ? WORDS.filtersNone : inUse.map(({ name }) => name).join(', ');
  return { ...row, children: <p class="quiet">{line}</p> };
}

const forecastLine = ({ forecast }: Shop, units: UnitSystem): string =>
  forecast
    ? FORECAST_WORDS.line(
        typedWords(forecast.dayTemperature.typed, units),
        typedWords(forecast.nightTemperature.typed, units),
      )
    : WORDS.forecastNone;
const roomLine = ({ volume, airFlow }: NonNullable<Shop['room']>, units: UnitSystem): string =>
  `${typedWords(volume.typed, units)}; ${ROOM_WORDS.flow.toLowerCase()} ${typedWords(airFlow.typed, units)}`;
