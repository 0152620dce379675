import type { Entry } from '../entry';
import type { Corrected } from './corrections';
import { createLedger } from './ledger';
import { foldDataSheets } from './mix/data-sheets';
import { foldIngredients } from './mix/ingredients';
import { foldJars } from './mix/jars';
import { foldRecipes } from './mix/recipes';
import { foldWeighUps } from './mix/weigh-ups';
import { foldCards } from './piece/cards';
import { foldMatches } from './piece/matches';
import { foldOldFinishes } from './piece/old-finishes';
import { foldOverrides } from './piece/overrides';
import { foldPieces } from './piece/pieces';
import { foldZonePieces } from './piece/zone-pieces';
import { createMemory, type Remember } from './remember';
import { foldAir } from './shop/air';
import { foldCautions } from './shop/cautions';
import { foldPhones } from './shop/phones';
import { foldPlans } from './shop/plans';
import { foldReminders } from './shop/reminders';
import { foldSettings } from './shop/settings';
import { foldShopAir } from './shop/shop-air';

/** The shop but for its entries, by way of each fold. A new area adds its fold here. */
export const foldAll = (remember: Remember) => ({
  ...remember(foldPieces),
  ...remember(foldJars),
  ...remember(foldIngredients),
  ...remember(foldRecipes),
  ...remember(foldWeighUps),
  ...remember(foldMatches),
  ...remember(foldAir),
  ...remember(foldShopAir),
  ...remember(foldCautions),
  ...remember(foldOldFinishes),
  ...remember(foldOverrides),
  ...remember(foldDataSheets),
  ...remember(foldPlans),
  ...remember(foldReminders),
  ...remember(foldSettings),
  ...remember(foldZonePieces),
  ...remember(foldCards),
  ...remember(foldPhones),
});

/** The shop as it is now. */
export interface Shop extends Readonly<ReturnType<typeof foldAll>> {
  /** Every entry by id as it was logged, struck and corrected ones too, in time order: what is kept. */
  readonly entries: ReadonlyMap<string, Entry>;
  /** The entry that happened last. */
  readonly last: Entry | undefined;
  /** The id of the entry that was logged last; empty where there is none. */
  readonly newest: string;
  readonly struck: ReadonlySet<string>;
  /** What a later line has corrected, by the id of the entry. Everything else here is as if it had been said so. */
  readonly corrected: ReadonlyMap<string, Corrected>;
  /** Every entry about a piece as it stands corrected, struck ones too, by piece in time order. */
  readonly records: ReadonlyMap<string, readonly Entry[]>;
}

/** A shop that grows: each call takes in more entries, in whatever order they come, and gives the shop as it then is. */
export function createFold(): (logged: Iterable<Entry>) => Shop {
  const ledger = createLedger();
  const remember = createMemory(ledger.lines);
  return (logged) => {
    ledger.add(logged);
    const { entries, last, newest, struck, corrected, records } = ledger;
    return { entries, last, newest, struck, corrected, records, ...foldAll(remember) };
  };
}

/** The shop from the entries in whatever order they come; an entry that comes twice counts once. */
export const fold = (logged: Iterable<Entry>): Shop => createFold()(logged);
