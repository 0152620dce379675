import { changePiece } from './change-piece';
import { changeSettings } from './change-settings';
import { closePiece } from './close-piece';
import { emptyJar } from './empty-jar';
import type { exportBackup } from './export-backup';
import { fillJar } from './fill-jar';
import type { importBackup } from './import-backup';
import { layCoat } from './lay-coat';
import type { ActionNeeds } from './log';
import { logCheck } from './log-check';
import { readAir } from './read-air';
import { sand } from './sand';
import { setForecast } from './set-forecast';
import { startPiece } from './start-piece';
import { undo } from './undo';

const ACTIONS = {
  startPiece,
  changePiece,
  closePiece,
  fillJar,
  emptyJar,
  readAir,
  setForecast,
  layCoat,
  sand,
  logCheck,
  changeSettings,
  undo,
  // Loaded when asked for: a backup is not what the first screen is waited for.
  exportBackup: async (...said: Parameters<typeof exportBackup>) =>
    (await import('./export-backup')).exportBackup(...said),
  importBackup: async (...said: Parameters<typeof importBackup>) =>
    (await import('./import-backup')).importBackup(...said),
};

type Bound<Action> = Action extends (needs: ActionNeeds, ...said: infer Said) => infer Done
  ? (...said: Said) => Done
  : never;

/** Everything a person can do, each without its needs. */
export type Actions = { readonly [Name in keyof typeof ACTIONS]: Bound<(typeof ACTIONS)[Name]> };

/** The actions on one logbook. */
export const bindActions = (needs: ActionNeeds): Actions =>
  Object.fromEntries(
    Object.entries(ACTIONS).map(([name, action]) => [
      name,
      (...said: unknown[]) => (action as (...all: unknown[]) => unknown)(needs, ...said),
    ]),
  ) as unknown as Actions;
