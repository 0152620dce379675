// Makes a fresh clone ready: packages from the lock file and, with --browser, the three engines to test in and
// that of the hub; with --hub, that alone.
import { spawnSync } from 'node:child_process';
import { existsSync, lstatSync, statSync } from 'node:fs';

function run(command, ...args) {
  const { status, error } = spawnSync(command, args, { stdio: 'inherit' });
  return error === undefined && status === 0;
}

function stop(message) {
  console.error(message);
  process.exit(1);
}

const installed = 'node_modules/.package-lock.json';
// A linked folder is somebody else's too, and npm would empty what it points to.
const isLinked = lstatSync('node_modules', { throwIfNoEntry: false })?.isSymbolicLink() === true;
const isFresh =
  isLinked || (existsSync(installed) && statSync(installed).mtimeMs >= statSync('package-lock.json').mtimeMs);
if (!isFresh && !run('npm', 'ci', '--no-audit', '--no-fund')) {
  stop('The packages could not be installed. Check the network and run the command again.');
}

/** What the tests drive, each with the Debian packages that bring it. */
const PROGRAMS = [
  {
    name: 'Chromium',
    path: process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium',
    packages: ['chromium', 'fonts-dejavu-core'],
  },
  { name: 'Firefox', path: process.env['FIREFOX_PATH'] ?? '/usr/bin/firefox-esr', packages: ['firefox-esr'] },
  { name: 'WebKit', path: '/usr/bin/WebKitWebDriver', packages: ['webkit2gtk-driver', 'xvfb', 'xauth'] },
  {
    name: 'nats-server',
    path: process.env['NATS_SERVER_PATH'] ?? '/usr/sbin/nats-server',
    packages: ['nats-server'],
  },
  { name: 'pdftotext', path: '/usr/bin/pdftotext', packages: ['poppler-utils'] },
];

const isAll = process.argv.includes('--browser');
if (isAll || process.argv.includes('--hub')) {
  const wanted = PROGRAMS.filter(({ name }) => isAll || name === 'nats-server');
  const missing = wanted.filter(({ path }) => !existsSync(path));
  if (missing.length > 0) {
    console.log(`Installing Debian's ${missing.map(({ name }) => name).join(', ')}.`);
    const packages = missing.flatMap((one) => one.packages);
    const isInstalled =
      existsSync('/usr/bin/apt-get') &&
      run('apt-get', 'update', '-q') &&
      run('apt-get', 'install', '-y', '-q', '--no-install-recommends', ...packages);
    const still = missing.filter(({ path }) => !existsSync(path));
    if (!isInstalled || still.length > 0) {
      stop(
        `This needs ${wanted.map(({ name }) => name).join(', ')}. On Debian, as root: apt-get install ` +
          `${packages.join(' ')}. Or name one that is installed: ${isAll ? 'CHROMIUM_PATH=/path FIREFOX_PATH=/path NATS_SERVER_PATH=/path npm test' : 'NATS_SERVER_PATH=/path npm run hub'}`,
      );
    }
  }
}
