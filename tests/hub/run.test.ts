import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';

test.each([
  {
    why: 'no nats-server',
    args: [],
    says: ['apt-get install nats-server', 'NATS_SERVER_PATH=/path npm run hub'],
  },
  {
    why: 'a port that is none',
    args: ['--port', 'eighty'],
    says: ['--port takes a number from 1 to 65535.'],
  },
  {
    why: 'an unknown option',
    args: ['--prot', '80'],
    says: ['--prot', 'npm run hub -- --data DIR --port N'],
  },
])('a hub that cannot start for $why says what to do, and makes nothing', ({ args, says }) => {
  const folder = mkdtempSync(join(tmpdir(), 'coatwait-run-'));
  onTestFinished(() => rmSync(folder, { recursive: true }));
  const data = join(folder, 'hub');
  const { status, stderr } = spawnSync(process.execPath, ['tests/hub/run.mjs', '--data', data, ...args], {
    encoding: 'utf8',
    env: { PATH: folder, NATS_SERVER_PATH: join(folder, 'nats-server') }, // nothing is found there
  });
  expect(status).toBe(1);
  for (const words of says) expect(stderr).toContain(words);
  expect(stderr).not.toContain('    at '); // no trace
  expect(readdirSync(folder)).toEqual([]);
});
