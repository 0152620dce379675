import { fetchOnce } from '../logbook/fetch-once';
import type * as All from './all';
import type { ActionNeeds } from './log';

const NAMES = [
  'startPiece',
  'changePiece',
  'closePiece',
  'fillJar',
  'emptyJar',
  'readAir',
  'setForecast',
  'layCoat',
  'sand',
  'logCheck',
  'changeSettings',
  'undo',
  'exportBackup',
  'importBackup',
] as const satisfies readonly (keyof typeof All)[];

type Bound<Action> = Action extends (needs: ActionNeeds, ...said: infer Said) => infer Done
  ? (...said: Said) => Done
  : never;

/** Everything a person can do, each without its needs. */
export type Actions = { readonly [Name in (typeof NAMES)[number]]: Bound<(typeof All)[Name]> };

/** Fetches the actions: ahead, so that the first tap does not wait for it. */
export const fetchActions = fetchOnce(() => import('./all'));

/** The actions on one logbook, loaded with the first that is used: the first screen shows, and does nothing yet. */
export const bindActions = (needs: ActionNeeds): Actions =>
  Object.fromEntries(
    NAMES.map((name) => [
      name,
      async (...said: unknown[]) => {
        const action = (await fetchActions())[name] as (...all: unknown[]) => unknown;
        return action(needs, ...said);
      },
    ]),
  ) as unknown as Actions;
