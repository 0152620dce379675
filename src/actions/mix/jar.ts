import { type ActionNeeds, type Logged, log, type Said } from '../log';

/** Sets a jar's amount right by weighing its content. */
export const weighJar = (needs: ActionNeeds, said: Said<'jar-weighed'>): Logged<'jar-weighed'> =>
  log(needs, 'jar-weighed', said);

/** Notes what was taken out of a jar other than by a coat. */
export const drawFromJar = (needs: ActionNeeds, said: Said<'jar-drawn'>): Logged<'jar-drawn'> =>
  log(needs, 'jar-drawn', said);

/** Logs what a test of an old jar found. */
export const testJar = (needs: ActionNeeds, said: Said<'jar-tested'>): Logged<'jar-tested'> =>
  log(needs, 'jar-tested', said);
