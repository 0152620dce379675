import { describe, expect, test } from 'vitest';
import {
  createFilm,
  dryThickness,
  type Film,
  heldSolvent,
  packed,
  shareBinder,
  unpack,
} from '../../src/estimator/film';
import { coarsen, layOn, sandOff, soakIn } from '../../src/estimator/solver/mesh';
import { emptyTrace, record } from '../../src/estimator/trace';

/** Two elements, 30 um below 10 um with a fifth of pigment; one solvent. */
function twoElements(): Film {
  const film = createFilm(1);
  film.nodes = 3;
  film.dz.set([30e-6, 10e-6]);
  film.pigment.set([0, 0.2]);
  film.u[0]?.set([0.3, 0.2, 0.1]);
  shareBinder(film);
  return film;
}

test('a node has half the binder of the elements on both sides, pigment being none', () => {
  const film = twoElements();
  // Of 30 um 15 to each side, of 8 um 4 to each side.
  expect([...film.binder.subarray(0, 3)].map((m) => m * 1e6)).toEqual(
    [15, 19, 4].map((um) => expect.closeTo(um, 9)),
  );
  expect(dryThickness(film) * 1e6).toBeCloseTo(40, 9);
  expect(heldSolvent(film, 0) * 1e6).toBeCloseTo(15 * 0.3 + 19 * 0.2 + 4 * 0.1, 9);
  // Once more gives the same.
  shareBinder(film);
  expect(heldSolvent(film, 0) * 1e6).toBeCloseTo(8.7, 9);
});

test('a packed film holds the nodes in use, and fills one with room to grow', () => {
  const film = twoElements();
  const copy = packed(film);
  expect(copy.dz).toHaveLength(3);
  expect(copy.u[0]).toHaveLength(3);
  const roomy = createFilm(1);
  unpack(copy, roomy);
  expect(packed(roomy)).toEqual(copy);
  expect(roomy.dz.length).toBe(film.dz.length);
});

describe('what is written down of a step', () => {
  const told = (film: Film) => {
    const trace = emptyTrace();
    // The wetness stands in for the glass transition, to be read off.
    record(trace, film, createFilm(1), (of, node) => of.u[0]?.[node] as number, 60, 294, 291);
    return trace;
  };

  test('is the surface, the base, all that is held, and the mean of the top 20 um', () => {
    const trace = told(twoElements());
    expect([trace.timeS, trace.airK, trace.filmK]).toEqual([[60], [294], [291]]);
    expect(trace.surfaceTgK[0]).toBeCloseTo(0.1, 12);
    expect(trace.baseTgK[0]).toBeCloseTo(0.3, 12);
    expect((trace.heldM[0] as number) * 1e6).toBeCloseTo(8.7, 9);
    // 10 um of 0.15 on the mean, and 10 um that go from 0.2 to a third of the way to 0.3; by hand.
    expect(trace.biteTgK[0]).toBeCloseTo((0.15 + (0.2 + 0.7 / 3) / 2) / 2, 12);
  });

  test('of a film thinner than that is the mean of all of it', () => {
    const film = twoElements();
    film.dz.set([6e-6, 2e-6]);
    expect(told(film).biteTgK[0]).toBeCloseTo((6 * 0.25 + 2 * 0.15) / 8, 12);
  });
});

describe('flash coat', () => {
  // Of 4 um of binder at the top, 19 and 15 below: so much solvent to a volume of binder is mixed in as deep as it is asked for.
  test.each([
    { what: 'no deeper than the top', solventUm: 4, dilution: 1, wet: [0.3, 0.2, 1.1] },
    { what: 'one node deeper', solventUm: 4.1, dilution: 1, wet: [0.3, 0.2 + 4.1 / 23, 0.1 + 4.1 / 23] },
    { what: 'no deeper than there is film', solventUm: 380, dilution: 1, wet: [10.3, 10.2, 10.1] },
  ])('soaks in $what', ({ solventUm, dilution, wet }) => {
    const film = twoElements();
    const before = heldSolvent(film, 0);
    soakIn(film, [solventUm * 1e-6], dilution);
    expect([...(film.u[0] as Float64Array).subarray(0, 3)]).toEqual(wet.map((u) => expect.closeTo(u, 9)));
    expect((heldSolvent(film, 0) - before) * 1e6).toBeCloseTo(solventUm, 6);
  });
});

describe('sanding', () => {
  // Off the top 5 um: half of the upper element; its new surface lies halfway between 0.1 and 0.2.
  test.each([
    { removedUm: 5, leftUm: 35, surface: 0.15 },
    { removedUm: 10, leftUm: 30, surface: 0.2 },
    { removedUm: 25, leftUm: 15, surface: 0.25 },
    { removedUm: 90, leftUm: 0, surface: 0.3 },
  ])(
    'of $removedUm um leaves $leftUm um and takes with it what these held',
    ({ removedUm, leftUm, surface }) => {
      const film = twoElements();
      const before = heldSolvent(film, 0);
      const [gone = 0] = sandOff(film, removedUm * 1e-6);
      expect(dryThickness(film) * 1e6).toBeCloseTo(leftUm, 9);
      expect(film.u[0]?.[film.nodes - 1]).toBeCloseTo(surface, 9);
      expect(gone).toBeGreaterThan(0);
      expect(before - gone).toBeCloseTo(heldSolvent(film, 0), 15);
    },
  );
});

test('a coat laid over another adds its binder and its solvent, and a mesh made coarser loses neither', () => {
  const film = createFilm(2);
  layOn(film, { dryM: 20e-6, wetness: [1, 0.5], pigment: 0, passage: 1 });
  layOn(film, { dryM: 10e-6, wetness: [2, 0], pigment: 0.25, passage: 1.4 });
  const held = () => [0, 1].map((i) => heldSolvent(film, i) * 1e6);
  const laid = [20 + 10 * 0.75 * 2, 10].map((um) => expect.closeTo(um, 6));
  expect(held()).toEqual(laid);
  // Finest at the air; no element thicker than a ninth of its coat.
  const sizes = [...film.dz.subarray(0, film.nodes - 1)].map((m) => m * 1e6);
  expect(sizes.at(-1)).toBeLessThan(0.13);
  expect(Math.max(...sizes)).toBeLessThan((1.5 * 20) / 9);
  layOn(film, { dryM: 15e-6, wetness: [0, 0], pigment: 0.25, passage: 1.4 });
  const before = film.nodes;
  coarsen(film);
  expect(film.nodes).toBeLessThan(before);
  expect(held()).toEqual(laid);
  expect(dryThickness(film) * 1e6).toBeCloseTo(45, 9);
  // The joint of unlike pigments stays where it was.
  let depth = 0;
  for (let e = 0; e < film.nodes - 1; e++) {
    expect(film.pigment[e]).toBe(depth < 19.99e-6 ? 0 : 0.25);
    expect(film.passage[e]).toBe(depth < 19.99e-6 ? 1 : 1.4);
    depth += film.dz[e] as number;
  }
});
