import { Solver as Odex } from 'odex';
import { test } from 'vitest';
import { createFilm, heldSolvent, shareBinder } from '../../src/estimator/film';
import type { StackHistory } from '../../src/estimator/history';
import { createKeptStacks } from '../../src/estimator/kept-stacks';
import { evaporation } from '../../src/estimator/laws/evaporation';
import { lacquerMobility } from '../../src/estimator/laws/lacquer';
import { lastWetS } from '../../src/estimator/read-off';
import { runEstimate } from '../../src/estimator/run-estimate';
import { simulate } from '../../src/estimator/simulate';
import { layOn } from '../../src/estimator/solver/mesh';
import { createSolver, DEFAULT_ACCURACY } from '../../src/estimator/solver/solver';
import { DAY_S, NITROCELLULOSE, SOLVENTS, stack, thinnerWith } from '../estimator/stacks';
import { processorMs, say } from './clock';

test('twelve coats, six solvents, 120 days', () => {
  const ms = [12, 24, 48].map((coats) => {
    const history = stack({ coats });
    let steps = 0;
    const spent = processorMs(() => {
      steps = simulate(history, { untilS: lastWetS(history) + 120 * DAY_S }).steps;
    });
    say(`  ${coats} coats, six solvents, 120 days: ${spent.toFixed(1)} ms, ${steps} steps`);
    return spent;
  });
  say(`  from 12 to 48 coats: x ${((ms[2] as number) / (ms[0] as number)).toFixed(1)}`);
  const history = stack({ coats: 12 });
  const band = processorMs(() => runEstimate({ history, nowS: 4 * DAY_S, checks: [] }), 5);
  say(`  a full band with curves and layers: ${band.toFixed(0)} ms`);
});

test('what is gone on from', () => {
  const kept = createKeptStacks();
  const pieces = Array.from({ length: 100 }, (_, k) => ({
    ...stack({ coats: 6 + (k % 7) }),
    air: Array.from({ length: 400 }, (__, n) => ({
      fromS: n * 43_200 + k,
      temperatureK: 288 + 6 * (n % 2),
      transferMS: 1.2e-3,
    })),
  }));
  const ask = (history: StackHistory, k: number) => ({
    history,
    nowS: lastWetS(history) + 2 * DAY_S + k,
    checks: [],
    stack: String(k),
  });
  const work = (histories: readonly StackHistory[], laterS: number) => {
    const before = process.cpuUsage();
    for (const [k, history] of histories.entries()) {
      const request = ask(pieces[k] as StackHistory, k);
      runEstimate({ ...request, history, nowS: request.nowS + laterS }, kept);
    }
    const { user, system } = process.cpuUsage(before);
    return (user + system) / 1e6;
  };
  const read = pieces.map((history, k) => {
    const fromS = ask(history, k).nowS + 60;
    const now = { fromS, temperatureK: 299, transferMS: 1.8e-3 };
    return { ...history, air: [...history.air, now].sort((one, other) => one.fromS - other.fromS) };
  });
  say(
    `  100 pieces from the start: ${work(pieces, 0).toFixed(1)} s; after one air reading: ${work(read, 120).toFixed(1)} s`,
  );
  const many = stack({ coats: 200 });
  const ms = processorMs(() => runEstimate({ history: many, nowS: lastWetS(many), checks: [] }), 3);
  say(`  200 coats on one piece, a full band: ${ms.toFixed(0)} ms`);
}, 600_000);

test('beside a general-purpose adaptive integrator, one coat, its first ten seconds', () => {
  const lay = () => {
    const film = createFilm(SOLVENTS.length);
    layOn(film, {
      dryM: 12e-6,
      wetness: thinnerWith(0.05).map((share) => (share * 0.85) / 0.15),
      pigment: 0,
      passage: 1,
    });
    return film;
  };
  const mobility = lacquerMobility(NITROCELLULOSE, SOLVENTS);
  const surface = evaporation(SOLVENTS, NITROCELLULOSE.chi, undefined);
  const air = { temperatureK: 294.15, transferMS: 1.2e-3 };
  const UNTIL_S = 10;
  const total = (film: ReturnType<typeof createFilm>) =>
    SOLVENTS.reduce((sum, _, i) => sum + heldSolvent(film, i), 0);

  const marched = (tolerance: number) => {
    const film = lay();
    const solver = createSolver(film, mobility, surface, { ...DEFAULT_ACCURACY, tolerance });
    for (let now = 0; now < UNTIL_S - 1e-9; ) now += solver.step(air, now, UNTIL_S - now);
    return total(film);
  };

  // On a dozen even elements, hundreds of times kinder to an explicit method than our mesh with its fine skin.
  const layEvenly = () => {
    const film = lay();
    film.nodes = 13;
    film.dz.fill(1e-6, 0, 12);
    shareBinder(film);
    return film;
  };

  const integrated = (tolerance: number) => {
    const film = layEvenly();
    const { nodes } = film;
    const k = new Float64Array(nodes);
    const conductance = new Float64Array(SOLVENTS.length);
    const ratio = mobility.ratio as readonly number[];
    const put = (y: readonly number[]) => {
      for (let i = 0; i < SOLVENTS.length; i++) {
        const u = film.u[i] as Float64Array;
        for (let n = 0; n < nodes; n++) u[n] = y[i * nodes + n] as number;
      }
    };
    const derivative = (_t: number, y: number[]): number[] => {
      put(y);
      mobility.fill?.(film, air.temperatureK, k);
      surface.fill(film, air, 0, conductance);
      const rate = new Array<number>(y.length).fill(0);
      for (let i = 0; i < SOLVENTS.length; i++) {
        const u = film.u[i] as Float64Array;
        for (let e = 0; e < nodes - 1; e++) {
          const a = k[e] as number;
          const b = k[e + 1] as number;
          const mean = ((a + b + 4 * Math.sqrt(a * b)) / 6) * (ratio[i] as number);
          const flux = (mean * ((u[e + 1] as number) - (u[e] as number))) / (film.dz[e] as number);
          rate[i * nodes + e] = (rate[i * nodes + e] as number) + flux / (film.binder[e] as number);
          rate[i * nodes + e + 1] =
            (rate[i * nodes + e + 1] as number) - flux / (film.binder[e + 1] as number);
        }
        const top = i * nodes + nodes - 1;
        rate[top] =
          (rate[top] as number) -
          ((conductance[i] as number) * (u[nodes - 1] as number)) / (film.binder[nodes - 1] as number);
      }
      return rate;
    };
    const odex = new Odex(SOLVENTS.length * nodes);
    odex.absoluteTolerance = tolerance;
    odex.relativeTolerance = tolerance;
    odex.maxSteps = 1e9;
    put(
      odex.solve(
        derivative,
        0,
        film.u.flatMap((u) => [...u.subarray(0, nodes)]),
        UNTIL_S,
      ).y,
    );
    return total(film);
  };

  const truth = marched(0.0005);
  const ours = processorMs(() => void marched(DEFAULT_ACCURACY.tolerance), 21);
  const before = process.cpuUsage();
  const theirs = integrated(1e-3);
  const { user, system } = process.cpuUsage(before);
  const spent = (user + system) / 1000;
  const percent = (value: number) => `${(100 * Math.abs(value / truth - 1)).toFixed(2)} % off`;
  say(
    `  ours ${ours.toFixed(2)} ms (${percent(marched(DEFAULT_ACCURACY.tolerance))}), odex ${spent.toFixed(0)} ms (${percent(theirs)}): x ${(spent / ours).toFixed(0)}`,
  );
});
