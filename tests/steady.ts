import { vi } from 'vitest';

// Every unit test says the same on any machine: on a busy one too, and in every run.

const PATIENCE_MS = 20_000; // that of a page in the browser tests
const { waitFor } = vi;
vi.waitFor = (what, given) =>
  waitFor(what, typeof given === 'number' ? given : { timeout: PATIENCE_MS, ...given });

/** The cases that properties draw are the same in every run; `SEED=7` draws others. */
vi.mock('fast-check', async (original) => {
  const actual = await original<typeof import('fast-check')>();
  actual.configureGlobal({ seed: Number(process.env['SEED'] ?? 1) });
  return actual;
});
