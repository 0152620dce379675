/** The jobs there is a plan to start from for. The logbook knows them by name without loading the plans. */
export const JOBS = [
  'melt-in',
  'opaque-touch-up',
  'full-clear',
  'toner',
  'waterborne',
  'shellac',
  'catalysed',
] as const;
export type Job = (typeof JOBS)[number];
