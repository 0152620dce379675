// Makes a fresh clone ready: packages from the lock file and, with --browser, a Chromium to test in.
import { spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';

function run(command, ...args) {
  const { status, error } = spawnSync(command, args, { stdio: 'inherit' });
  return error === undefined && status === 0;
}

function stop(message) {
  console.error(message);
  process.exit(1);
}

const installed = 'node_modules/.package-lock.json';
const isFresh = existsSync(installed) && statSync(installed).mtimeMs >= statSync('package-lock.json').mtimeMs;
if (!isFresh && !run('npm', 'ci', '--no-audit', '--no-fund')) {
  stop('The packages could not be installed. Check the network and run the command again.');
}

if (process.argv.includes('--browser')) {
  const chromium = process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium';
  if (!existsSync(chromium)) {
    console.log(`No Chromium at ${chromium}: installing Debian's.`);
    const isInstalled =
      existsSync('/usr/bin/apt-get') &&
      run('apt-get', 'update', '-q') &&
      run('apt-get', 'install', '-y', '-q', '--no-install-recommends', 'chromium', 'fonts-dejavu-core');
    if (!isInstalled || !existsSync(chromium)) {
      stop(
        'The browser tests need Chromium. Install it (on Debian, as root: apt-get install chromium), or name one ' +
          'that is installed: CHROMIUM_PATH=/path/to/chromium npm test',
      );
    }
  }
}
