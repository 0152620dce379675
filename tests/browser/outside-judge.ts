import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import lighthouse from 'lighthouse';
import { type BrowserContext, chromium } from 'playwright-core';
import { CHROMIUM } from './browser';

interface Judged {
  /** Out of 100, by category. */
  readonly scores: Readonly<Record<string, number>>;
  readonly faults: readonly string[];
}

/** An outside judge of pages as on a middling phone. It runs here, asks no other machine and reports to none. */
export class OutsideJudge {
  private constructor(
    readonly context: BrowserContext,
    private readonly profile: string,
    private readonly port: number,
  ) {}

  static async call(): Promise<OutsideJudge> {
    const profile = mkdtempSync(join(tmpdir(), 'judged-'));
    const args = [...CHROMIUM.args, '--remote-debugging-port=0'];
    const context = await chromium.launchPersistentContext(profile, { ...CHROMIUM, args, viewport: null });
    const port = readFileSync(join(profile, 'DevToolsActivePort'), 'utf8').split('\n')[0];
    return new OutsideJudge(context, profile, Number(port));
  }

  async judge(address: string, categories: string[], isFirstVisit = false): Promise<Judged> {
    const result = await lighthouse(address, {
      port: this.port,
      logLevel: 'error',
      onlyCategories: categories,
      disableFullPageScreenshot: true,
      disableStorageReset: !isFirstVisit,
    });
    if (!result || result.lhr.runtimeError)
      throw new Error(result?.lhr.runtimeError?.message ?? 'not judged');
    const { audits, categories: judged } = result.lhr;
    const scores = Object.values(judged).map(
      ({ id, score }) => [id, Math.round((score ?? 0) * 100)] as const,
    );
    const faults = Object.values(judged)
      .flatMap(({ auditRefs }) => auditRefs.filter(({ weight }) => weight > 0))
      .map(({ id }) => audits[id])
      .flatMap((audit) => (audit && audit.score !== null && audit.score < 1 ? [audit.title] : []));
    return { scores: Object.fromEntries(scores), faults };
  }

  async leave(): Promise<void> {
    await this.context.close();
    rmSync(this.profile, { recursive: true, force: true });
  }
}
