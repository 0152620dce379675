// Fails on a known hole of weight in a package; says so and passes where the register of holes cannot be asked.
import { spawnSync } from 'node:child_process';

const LONGEST_MS = 30_000;
const { stdout } = spawnSync('npm', ['audit', '--json', '--fetch-retries=0'], {
  encoding: 'utf8',
  timeout: LONGEST_MS,
  killSignal: 'SIGKILL',
});

/** What was counted, by weight; nothing where the answer is an error, no answer, or was waited for in vain. */
function holesIn(answer) {
  try {
    return JSON.parse(answer).metadata?.vulnerabilities;
  } catch {
    return undefined;
  }
}

const holes = holesIn(stdout);
if (holes === undefined) console.log('The register of known holes could not be asked: not checked.');
else console.log(`Known holes: ${JSON.stringify(holes)}`);
if (holes?.high > 0 || holes?.critical > 0) process.exit(1);
