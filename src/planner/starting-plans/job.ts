/** The jobs there was a plan to start from for at first. */
export const FIRST_JOBS = [
  'melt-in',
  'opaque-touch-up',
  'full-clear',
  'toner',
  'waterborne',
  'shellac',
  'catalysed',
] as const;
/** The jobs there is a plan to start from for. The logbook knows them by name without loading the plans. */
export const JOBS = [...FIRST_JOBS, 'drop-fill', 'coats-on'] as const;
export type Job = (typeof JOBS)[number];
