import type { Entry } from '../entry';
import { foldAir } from './air';
import { foldCautions } from './cautions';
import { foldDataSheets } from './data-sheets';
import { foldIngredients } from './ingredients';
import { foldJars } from './jars';
import { createLedger } from './ledger';
import { foldMatches } from './matches';
import { foldOldFinishes } from './old-finishes';
import { foldPieces } from './pieces';
import { foldPlans } from './plans';
import { foldRecipes } from './recipes';
import { createMemory, type Remember } from './remember';
import { foldReminders } from './reminders';
import { foldSettings } from './settings';
import { foldShopAir } from './shop-air';
import { foldWeighUps } from './weigh-ups';

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
  ...remember(foldDataSheets),
  ...remember(foldPlans),
  ...remember(foldReminders),
  ...remember(foldSettings),
});

/** The shop as it is now. */
export interface Shop extends Readonly<ReturnType<typeof foldAll>> {
  /** Every entry by id, struck ones too, in time order: the treatment record. */
  readonly entries: ReadonlyMap<string, Entry>;
  /** The entry that happened last. */
  readonly last: Entry | undefined;
  readonly struck: ReadonlySet<string>;
  /** Every entry about a piece, struck ones too, by piece in time order. */
  readonly records: ReadonlyMap<string, readonly Entry[]>;
}

/** A shop that grows: each call takes in more entries, in whatever order they come, and gives the shop as it then is. */
export function createFold(): (logged: Iterable<Entry>) => Shop {
  const ledger = createLedger();
  const remember = createMemory(ledger.lines);
  return (logged) => {
    ledger.add(logged);
    const { entries, last, struck, records } = ledger;
    return { entries, last, struck, records, ...foldAll(remember) };
  };
}

/** The shop from the entries in whatever order they come; an entry that comes twice counts once. */
export const fold = (logged: Iterable<Entry>): Shop => createFold()(logged);
