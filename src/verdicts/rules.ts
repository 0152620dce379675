import type { Rule } from './reason';
import { blush, coldShock, dampNight, tooCold, tooDamp } from './rules/air';
import { baseLifts, baseUnknown, noMelt, silicone } from './rules/base';
import { filmLimit, windowClosed } from './rules/build';
import { dropWaits } from './rules/drops';
import { estimate } from './rules/estimate';
import { filmGums, filmPrints } from './rules/film';
import { fillerProud, groundWaits } from './rules/ground';
import { aerosol, isocyanate, jarPast } from './rules/jar';
import { layersShow, sandsThrough, stillSoft, untried } from './rules/layers';
import { lead } from './rules/lead';

/** Everything that the judge minds. A new rule is its function, its line here, its words and its table of cases. */
export const RULES: readonly Rule[] = [
  lead,
  baseLifts,
  baseUnknown,
  noMelt,
  silicone,
  filmPrints,
  filmGums,
  windowClosed,
  filmLimit,
  sandsThrough,
  jarPast,
  isocyanate,
  aerosol,
  tooCold,
  tooDamp,
  dampNight,
  blush,
  layersShow,
  coldShock,
  groundWaits,
  dropWaits,
  fillerProud,
  estimate,
  untried,
  stillSoft,
];
