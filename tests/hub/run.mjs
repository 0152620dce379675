// npm run hub: the hub of a shop on one computer. Options: --data DIR, --port N, --address https://shop.example/, --new-sign-in.
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import { parseArgs } from 'node:util';

function stop(message) {
  console.error(message);
  process.exit(1);
}

const given = readOptions();
const data = resolve(given.data);
const hashFile = join(data, 'sign-in');
const pidFile = join(data, 'pid');
const port = Number(given.port);
if (!Number.isInteger(port) || port < 1 || port > 65_535) stop('--port takes a number from 1 to 65535.');
const address = given.address ?? `http://localhost:${port}/`;

prepare();
const { freePort, hashed, startNats } = await import('./nats-server.mjs');
const { serveHub } = await import('./serve.mjs');
mkdirSync(data, { recursive: true, mode: 0o700 });

const isNew = given['new-sign-in'] || !existsSync(hashFile);
if (isNew) await makeSignIn();
else
  console.log(
    'The code was shown when it was made. A joined phone shows one under Add a screen; --new-sign-in makes a new one.',
  );

const running = runningHub();
if (running !== undefined) {
  if (!isNew) stop(`A hub is running on ${data} already (process ${running}).`);
  process.kill(running, 'SIGHUP');
  console.log('The running hub takes the new sign-in; every phone is shut out until it joins again.');
  process.exit(0);
}
await run();

function readOptions() {
  try {
    return parseArgs({
      options: {
        data: { type: 'string', default: join(homedir(), 'coatwait-hub') },
        port: { type: 'string', default: '4180' },
        address: { type: 'string' },
        'new-sign-in': { type: 'boolean', default: false },
      },
    }).values;
  } catch (error) {
    return stop(
      `${error.message}\nnpm run hub -- --data DIR --port N --address https://shop.example/ --new-sign-in`,
    );
  }
}

/** The packages, the built app and the engine, where they are missing. */
function prepare() {
  const run = (command, ...args) => spawnSync(command, args, { stdio: 'inherit' }).status === 0;
  if (!run(process.execPath, 'tests/prepare.mjs', '--hub')) process.exit(1);
  if (!existsSync('dist/service-worker.js') && !run('npx', 'vite', 'build'))
    stop('The app could not be built.');
}

/** A new password, kept hashed and shown once. */
async function makeSignIn() {
  const { runnerImport } = await import('vite');
  const codes = (await runnerImport(resolve('src/hub/shop-code.ts'))).module;
  const password = codes.newPassword();
  writeFileSync(hashFile, hashed(password), { mode: 0o600 });
  const code = codes.writeCode({ password, secret: undefined });
  const link = codes.linkOf(address, code);
  const { generate } = await import('lean-qr');
  console.log(generate(link).toString({ on: '  ', off: '██', pad: 2, padX: 2 }));
  console.log(`Open it on the first phone: ${link}`);
  console.log(`Or type under More, Other screens: ${codes.inFours(code)}`);
  console.log('It is shown this once. Keep it from whoever shall not join.\n');
}

function runningHub() {
  const pid = existsSync(pidFile) ? Number(readFileSync(pidFile, 'utf8')) : undefined;
  if (!pid) return undefined;
  try {
    process.kill(pid, 0);
    return pid;
  } catch {
    return undefined; // it has died
  }
}

async function run() {
  const natsPort = await freePort();
  const start = () => startNats({ dir: data, port: natsPort, passwordHash: readFileSync(hashFile, 'utf8') });
  let nats = await start();
  let isOver = false;
  let isChanging = false;
  writeFileSync(pidFile, String(process.pid));
  const server = await serveHub({ port, natsPort }).catch(async (error) => {
    await nats.stop();
    return stop(`Port ${port} cannot be used: ${error.message}`);
  });
  console.log(`The hub of the shop is at ${address} and keeps its entries in ${data}. Ctrl+C ends it.`);
  if (!address.startsWith('https:'))
    console.log('Phones need an https address in front of it: see DEVELOPERS.md.');

  process.on('SIGHUP', async () => {
    isChanging = true;
    await nats.stop();
    nats = await start();
    isChanging = false;
    watch();
  });
  const end = async () => {
    isOver = true;
    await Promise.all([nats.stop(), server.close()]);
    rmSync(pidFile, { force: true });
    process.exit(0);
  };
  process.on('SIGINT', () => void end());
  process.on('SIGTERM', () => void end());
  watch();

  /** Starts the engine again where it has died. */
  function watch() {
    void nats.ended.then(async () => {
      if (isOver || isChanging) return;
      console.error('nats-server has ended; it is started again.');
      await new Promise((done) => setTimeout(done, 1_000));
      nats = await start();
      watch();
    });
  }
}
