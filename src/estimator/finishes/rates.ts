import { saturationPressurePa } from '../../science/air/saturation';
import { solvent } from '../../science/solvents/solvents';
import { nearestVapourPressurePa } from '../../science/solvents/vapour-pressure';
import { toCelsius } from '../../units';
import { arrheniusFactor } from '../laws/glass';
import { USUAL_SHOP } from '../usual-shop';
import type { FinishLaw } from './finish-law';
import type { LawAir } from './law-history';

type Air = Pick<LawAir, 'temperatureK' | 'relativeHumidity'>;

const TYPICAL_SOLVENT = solvent('n-butyl-acetate');
/** In saturated air nothing dries; a little less than that keeps times finite (judgement, no source). */
const DAMPEST = 0.99;
/** Sharpness of vitrification, K, and how far the film's glass transition outruns the room before it stops the cure, K. */
const VITRIFICATION = { widthK: 10, beyondK: 15 };
/** Ratio of heat-capacity steps of the cured and the uncured resin: typical, as {@link tgAtK} says. */
const LAMBDA = 0.5;

/**
 * How fast a coat dries, against the reference conditions.
 *
 * Source: water leaves with (1 - RH) psat(T), the 1/(1 - RH) law of waterborne coatings; solvent with its vapour pressure,
 * n-butyl acetate standing for the blend.
 * Valid: -20 to 55 °C. Accuracy: the kind, not the product.
 * Left out: air movement, cooling of the film.
 */
export function dryingRate({ dries, formsFilmFromK }: FinishLaw, air: Air): number {
  if (formsFilmFromK !== undefined && air.temperatureK < formsFilmFromK) return 0;
  return dries === 'by-water'
    ? waterRate(air) / waterRate(USUAL_SHOP)
    : solventRate(air) / solventRate(USUAL_SHOP);
}

const waterRate = ({ temperatureK, relativeHumidity }: Air): number =>
  (1 - Math.min(relativeHumidity, DAMPEST)) * saturationPressurePa(toCelsius(temperatureK));
const solventRate = ({ temperatureK }: Air): number => nearestVapourPressurePa(TYPICAL_SOLVENT, temperatureK);

/**
 * How fast a cure runs at a conversion, 1/s.
 *
 * Source: first order with Arrhenius; held back by diffusion once the film turns to glass: a logistic in Tg - T, whose
 * form and width are judgement (no source).
 * Valid: conversion 0 to 1.
 * Left out: humidity that a urethane reacts with, acid that evaporates.
 */
export function cureRateS(law: FinishLaw, conversion: number, temperatureK: number): number {
  if (law.formsFilmFromK !== undefined && temperatureK < law.formsFilmFromK) return 0;
  const warm = arrheniusFactor(law.activationJMol, USUAL_SHOP.temperatureK, temperatureK);
  const beyondK = tgAtK(law, conversion) - temperatureK - VITRIFICATION.beyondK;
  const free = law.vitrifies ? 1 / (1 + Math.exp(beyondK / VITRIFICATION.widthK)) : 1;
  return law.rateS * warm * (1 - conversion) * free;
}

/**
 * Glass transition of a film at a conversion, solvent gone, K.
 *
 * Source: A. T. DiBenedetto, J. Polym. Sci. B 25 (1987) 1949, in the form of J. P. Pascault and R. J. J. Williams,
 * J. Polym. Sci. B 28 (1990) 85: (Tg - Tg0)/(Tg1 - Tg0) = L a/(1 - (1 - L) a).
 * Valid: 0 to 1. Accuracy: exact at both ends; L 0.5 is typical.
 */
export function tgAtK({ startTgK, endTgK }: FinishLaw, conversion: number): number {
  return startTgK + ((endTgK - startTgK) * LAMBDA * conversion) / (1 - (1 - LAMBDA) * conversion);
}
