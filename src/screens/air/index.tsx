import { Lazy, type LoadScreen } from '../../parts/lazy';
import { route } from '../../parts/route';
import { AirNow } from './now';

/** Pages behind the place, fetched when asked for. */
const PAGES: Readonly<Record<string, LoadScreen>> = {
  read: async () => (await import('./read')).ReadAir,
  readings: async () => (await import('./readings')).Readings,
  forecast: async () => (await import('./forecast')).SetForecast,
  room: async () => (await import('./room')).RoomPage,
  'room-form': async () => (await import('./room-form')).RoomForm,
  ended: async () => (await import('./ended')).SprayingEnded,
  filters: async () => (await import('./filters')).Filters,
  'filter-form': async () => (await import('./filter-form')).FilterForm,
  cautions: async () => (await import('./cautions')).Cautions,
  'day-end': async () => (await import('./day-end')).DayEnd,
  old: async () => (await import('./old-finish')).OldFinishPage,
  finishes: async () => (await import('./finishes')).Finishes,
  finish: async () => (await import('./finish')).FinishPage,
  sheet: async () => (await import('./sheet')).SheetPage,
};

/** The air against the piece; breath, fire and finishes lie a tap below it. */
export function Air() {
  const [page = ''] = route.value.rest;
  const load = Object.hasOwn(PAGES, page) ? PAGES[page] : undefined;
  return load ? <Lazy load={load} /> : <AirNow />;
}
