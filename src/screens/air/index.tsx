import { Lazy, type LoadScreen } from '../../parts/frame/lazy';
import { route } from '../../parts/frame/route';
import { AirNow } from './now';

/** Pages behind the place, fetched when asked for. */
const PAGES: Readonly<Record<string, LoadScreen>> = {
  read: async () => (await import('./read')).ReadAir,
  readings: async () => (await import('./readings')).Readings,
  correct: async () => (await import('./correct-reading')).CorrectReading,
  forecast: async () => (await import('./forecast')).SetForecast,
  room: async () => (await import('./room/room')).RoomPage,
  'room-form': async () => (await import('./room/room-form')).RoomForm,
  ended: async () => (await import('./room/ended')).SprayingEnded,
  filters: async () => (await import('./room/filters')).Filters,
  'filter-form': async () => (await import('./room/filter-form')).FilterForm,
  cautions: async () => (await import('./cautions')).Cautions,
  'day-end': async () => (await import('./day-end')).DayEnd,
  old: async () => (await import('./old-pieces')).OldPieces,
  finishes: async () => (await import('./finish/finishes')).Finishes,
  finish: async () => (await import('./finish/finish')).FinishPage,
  sheet: async () => (await import('./finish/sheet')).SheetPage,
};

/** The air against the piece; breath, fire and finishes lie a tap below it. */
export function Air() {
  const [page = ''] = route.value.rest;
  const load = Object.hasOwn(PAGES, page) ? PAGES[page] : undefined;
  return load ? <Lazy load={load} /> : <AirNow />;
}
