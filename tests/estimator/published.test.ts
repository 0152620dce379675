import { describe, expect, test } from 'vitest';
import { evaporation } from '../../src/estimator/laws/evaporation';
import { arrheniusFactor } from '../../src/estimator/laws/glass';
import { createTgOf, lacquerMobility } from '../../src/estimator/laws/lacquer';
import type { MobilityLaw, SurfaceLaw } from '../../src/estimator/laws/law';
import reference from '../reference/drying-checks.json';
import { meanWetness, runFilm } from './film-run';
import { type FreeVolume, freeVolumeMobility, mutualDiffusivity, selfDiffusivityM2S } from './free-volume';
import { foxK, kelleyBuecheK, wlfLogViscosity } from './glass-laws';

const { B1, B2, B3, R1, R3, R5, R7, R10, L1, G1, G2, G3, K2 } = reference.checks;

const freeVolume = (from: typeof B1.inputs): FreeVolume => ({
  d0Cm2S: from.D0_cm2_s,
  v1: from.V1star,
  v2: from.V2star,
  xi: from.xi,
  k11: from.K11_over_gamma,
  k12: from.K12_over_gamma,
  k21MinusTg1K: from.K21_minus_Tg1,
  k22MinusTg2K: from.K22_minus_Tg2,
  chi: from.chi,
});
const TOLUENE_IN_PVAC = freeVolume({ ...B2.inputs, E: 0, mutual: '' });

// Zielinski and Duda 1992, table 4 (parameters read in an open library that quotes it).
describe('free-volume diffusivity', () => {
  test.each([
    { polymer: 'polystyrene', constants: freeVolume(B1.inputs), row: B1 },
    { polymer: 'poly(vinyl acetate)', constants: TOLUENE_IN_PVAC, row: B2 },
  ])('toluene in $polymer', ({ constants, row }) => {
    const self = selfDiffusivityM2S(constants, row.inputs.w1, row.inputs.T_K);
    expect(Math.abs((self * 1e4) / row.expected.D1_cm2_s - 1)).toBeLessThan(row.tolerance.rel);
    const mutual = mutualDiffusivity(self, row.inputs.w1, constants.chi) * 1e4;
    expect(Math.abs(mutual / row.expected.D_cm2_s - 1)).toBeLessThan(row.tolerance.rel);
  });

  // Faldi et al. 1994, with the glassy polymer's share of hole growth.
  test.each(B3.expected.w_polymer.map((w2, k) => ({ w2, expected: B3.expected.D1_cm2_s[k] as number })))(
    'methyl methacrylate in its polymer, $w2 polymer',
    ({ w2, expected }) => {
      const from = B3.inputs;
      const constants: FreeVolume = {
        d0Cm2S: from.D0_cm2_s,
        v1: from.V1,
        v2: from.V2,
        xi: from.xi,
        k11: from.K11g,
        k12: from.K12g,
        k21MinusTg1K: from.K21 - from.Tg1,
        k22MinusTg2K: from.K22 - from.Tg2,
        chi: 0,
        glass: { tgK: from.Tg2, share: from.alpha },
        activationK: from.E_cal_mol / from.R_cal,
      };
      const self = selfDiffusivityM2S(constants, 1 - w2, from.T_C + from.T_K_offset);
      expect(Math.abs((self * 1e4) / expected - 1)).toBeLessThan(B3.tolerance.rel_formula);
    },
  );
});

/** Grams of toluene per 100 g of polymer at the times of a reference case. */
function tolueneKept(
  row: typeof R1,
  timesS: readonly number[],
  transferMS = row.inputs.k_g_mm_s * 1e-3,
): number[] {
  const { rho_toluene, rho_PVAc, M, p_sat_Pa, u0, L_um, T_C } = row.inputs;
  const toluene = {
    densityKgM3: rho_toluene,
    molarMassKgMol: M,
    latentHeatJMol: 0,
    transferRatio: 1,
    vapour: { lnA: Math.log(p_sat_Pa), lnB: 0, cK: 0 },
  };
  const run = {
    dryM: L_um * 1e-6,
    wetness: [u0],
    mobility: freeVolumeMobility(TOLUENE_IN_PVAC, { polymerKgM3: rho_PVAc, solventKgM3: rho_toluene }),
    surface: evaporation([toluene], TOLUENE_IN_PVAC.chi, undefined),
    temperatureK: 273.15 + T_C,
    transferMS,
  };
  return runFilm(run, timesS, (film) => (100 * meanWetness(film) * rho_toluene) / rho_PVAc);
}

// Independent reference solvers: vertex volumes with a stiff integrator, and cell-centred volumes, agreeing to four digits.
describe.each(Object.entries({ R1, R3, R5, R7 }))(
  'drying of poly(vinyl acetate) from toluene, case %s',
  (_id, row) => {
    const kept = tolueneKept(row, row.expected.t_s);
    test.each(
      row.expected.t_s.map((t, k) => ({
        t,
        expected: row.expected.g_toluene_per_100g_polymer[k] as number,
        k,
      })),
    )('$t s: $expected g per 100 g', ({ expected, k }) => {
      expect(Math.abs((kept[k] as number) / expected - 1)).toBeLessThan(row.tolerance.rel);
    });
  },
);

// Thesis abstract of the Cairncross group: the plateau of a rubbery film does not know of the air that blew over it.
test('sixteen times the air makes less than 1 % of difference after a day', () => {
  const days = [86_400, 604_800];
  const gentle = tolueneKept(R5, days);
  const strong = tolueneKept(R5, days, 16 * R5.inputs.k_g_mm_s * 1e-3);
  for (const [k, kept] of gentle.entries())
    expect(Math.abs(kept / (strong[k] as number) - 1)).toBeLessThan(0.01);
});

describe('two solvents with laws of their own (independent reference solver)', () => {
  const { D0, beta, u0, L_m } = R10.inputs as unknown as {
    D0: number[];
    beta: number[];
    u0: number[];
    L_m: number;
  };
  const wetnessAt = (film: { u: readonly Float64Array[] }, n: number) =>
    (film.u[0]?.[n] as number) + (film.u[1]?.[n] as number);
  const mobility: MobilityLaw = {
    at(film, n, _temperatureK, i) {
      const wetness = wetnessAt(film, n);
      return Math.min((D0[i] as number) * Math.exp(40 * wetness), 1e-10) / (1 + wetness) ** 2;
    },
  };
  const surface: SurfaceLaw = {
    fill(film, air, _since, conductance) {
      const phiP = 1 / (1 + wetnessAt(film, film.nodes - 1));
      for (const [i, b] of beta.entries()) conductance[i] = b * phiP;
      return air.temperatureK;
    },
  };
  const { t_s, uA, uB } = R10.expected;
  const rows = runFilm({ dryM: L_m, wetness: u0, mobility, surface, tolerance: 0.001 }, t_s, (film) => [
    meanWetness(film, 0),
    meanWetness(film, 1),
  ]);
  test.each(t_s.map((t, k) => ({ t, k })))('$t s', ({ k }) => {
    const [a, b] = rows[k] as [number, number];
    expect(Math.abs(b / (uB[k] as number) - 1)).toBeLessThan(R10.tolerance.rel_uB);
    if (k < 4) expect(Math.abs(a / (uA[k] as number) - 1)).toBeLessThan(R10.tolerance.rel_uA_first4);
    else expect(Math.abs(Math.log10(a / (uA[k] as number)))).toBeLessThan(1);
  });
});

// The lacquer law itself against an independent solver: it tests the code, not nature.
describe.each([
  { name: '20 um', L: 20e-6, row: L1.expected.L20um },
  { name: '100 um', L: 100e-6, row: L1.expected.L100um },
])('a lacquer through its glass transition, $name', ({ L, row }) => {
  const { Tg1_K, Dg_m2_s, b, Eg_J_mol, chi, rho1, rho2, M, w_start, k_g_mm_s, Tg2_C, T_C } = L1.inputs;
  const binder = {
    densityKgM3: rho2,
    tgK: 273.15 + Tg2_C,
    chi,
    glassDiffusivityM2S: Dg_m2_s,
    wlfShare: b,
    glassActivationJMol: Eg_J_mol,
  };
  const solvent = {
    densityKgM3: rho1,
    tgK: Tg1_K,
    ratio: 1,
    molarMassKgMol: M,
    latentHeatJMol: 43_900,
    transferRatio: 1,
    // 1664 Pa at 25 C, and the slope of the latent heat (Clausius and Clapeyron)
    vapour: { lnA: Math.log(1664) + 43_900 / 8.314 / 298.15, lnB: 43_900 / 8.314, cK: 0 },
  };
  const tg = createTgOf(binder, [solvent]);
  const rows = runFilm(
    {
      dryM: L,
      wetness: [((w_start / (1 - w_start)) * rho2) / rho1],
      mobility: lacquerMobility(binder, [solvent]),
      surface: evaporation([solvent], chi, undefined),
      temperatureK: 273.15 + T_C,
      transferMS: k_g_mm_s * 1e-3,
      tolerance: 0.005,
    },
    L1.expected.t_s,
    (film) => {
      const mass = meanWetness(film) * rho1;
      return { wtPct: (100 * mass) / (mass + rho2), baseTgC: tg(film, 0) - 273.15 };
    },
  );
  test.each(L1.expected.t_s.map((t, k) => ({ t, wt: row.wt_pct[k] as number, k })))(
    '$t s: $wt % of the mass',
    ({ wt, k }) => {
      expect(Math.abs((rows[k]?.wtPct as number) / wt - 1)).toBeLessThan(L1.tolerance.rel_wt);
    },
  );
  const atBase: readonly number[] = 'Tg_substrate_C' in row ? (row.Tg_substrate_C as number[]) : [];
  for (const [k, tgC] of atBase.entries()) {
    test(`glass transition at the base ${tgC} C`, () => {
      expect(Math.abs((rows[k]?.baseTgC as number) - tgC)).toBeLessThan(L1.tolerance.abs_Tg);
    });
  }
});

describe('glass transition', () => {
  // Williams, Landel and Ferry 1955.
  test.each(
    G1.inputs.T_minus_Tg.map((above, k) => ({ above, expected: G1.expected.log10_eta[k] as number })),
  )('viscosity $above K above it', ({ above, expected }) => {
    expect(Math.abs(wlfLogViscosity(above) - expected)).toBeLessThan(G1.tolerance.abs);
  });
  // Fox 1956.
  test.each(G2.inputs.w_solvent.map((w, k) => ({ w, expected: G2.expected.Tg_K[k] as number })))(
    'Fox at $w solvent',
    ({ w, expected }) => {
      expect(Math.abs(foxK([w, 1 - w], [G2.inputs.Tg1_K, G2.inputs.Tg2_K]) - expected)).toBeLessThan(
        G2.tolerance.abs,
      );
    },
  );
  // Kelley and Bueche 1961.
  test.each(G3.inputs.phi_s.map((phi, k) => ({ phi, expected: G3.expected.Tg_K[k] as number })))(
    'Kelley and Bueche at $phi solvent',
    ({ phi, expected }) => {
      const { alpha_p, alpha_s, Tg_p, Tg_s } = G3.inputs;
      const tgK = kelleyBuecheK(
        phi,
        { expansionPerK: alpha_p, tgK: Tg_p },
        { expansionPerK: alpha_s, tgK: Tg_s },
      );
      expect(Math.abs(tgK - expected)).toBeLessThan(G3.tolerance.abs);
    },
  );
});

test.each(K2.inputs.Ea_kJ_mol.map((kJ, k) => ({ kJ, expected: K2.expected.factor[k] as number })))(
  'Arrhenius, $kJ kJ/mol, 20 to 30 C: x $expected',
  ({ kJ, expected }) => {
    expect(Math.abs(arrheniusFactor(kJ * 1000, 293.15, 303.15) - expected)).toBeLessThan(K2.tolerance.abs);
  },
);
