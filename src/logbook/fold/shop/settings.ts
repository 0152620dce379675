import type { EntryInSi, Lines } from '../in-si';

/** What the person has chosen so far; what is absent has never been chosen. */
export type Settings = EntryInSi<'settings-changed'>['patch'];

/** The settings, later choices over earlier ones. */
export const foldSettings = (lines: Lines) => ({
  settings: Object.assign({}, ...lines.of('settings-changed').map(({ patch }) => patch)) as Settings,
});
