import type { ComponentType } from 'preact';
import { route } from '../../parts/route';
import { SetForecast } from './forecast';
import { AirNow } from './now';
import { ReadAir } from './read';

const PAGES: Readonly<Record<string, ComponentType>> = {
  read: ReadAir,
  forecast: SetForecast,
};

/** The air against the piece; breath, fire and finishes lie a tap below it. */
export function Air() {
  const [page] = route.value.rest;
  const Shown = (page !== undefined && Object.hasOwn(PAGES, page) && PAGES[page]) || AirNow;
  return <Shown />;
}
