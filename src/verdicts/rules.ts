import type { Rule } from './reason';
import { baseLifts } from './rules/base';
import { filmLimit, windowClosed } from './rules/build';
import { estimate } from './rules/estimate';
import { filmGums, filmPrints } from './rules/film';
import { lead } from './rules/lead';

/** Everything that the judge minds. A new rule is its function, its line here, its words and its table of cases. */
export const RULES: readonly Rule[] = [
  lead,
  baseLifts,
  filmPrints,
  filmGums,
  windowClosed,
  filmLimit,
  estimate,
];
