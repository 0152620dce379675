import type { ComponentType } from 'preact';
import { route } from '../../parts/frame/route';
import { CorrectLine } from '../../parts/kept/correct-line';
import { AmountPage } from './amount/amount-page';
import { CupPage } from './cup/cup-page';
import { FillPage } from './fill/fill-page';
import { FindJar } from './find/find-jar';
import { ChangeIngredient, NewIngredient } from './ingredient/edit-ingredient';
import { IngredientList, IngredientPage } from './ingredient/ingredient-pages';
import { JarPage } from './jar/jar-page';
import { LabelPage } from './jar/label-page';
import { NewJar } from './jar/new-jar';
import { MixHome } from './mix-home';
import { ChangeRecipe, NewRecipe } from './recipe/edit-recipe';
import { RecipePage } from './recipe/recipe-page';
import { PlanPage } from './weigh/plan-page';
import { WeighPage } from './weigh/weigh-page';

interface PageOf {
  readonly id: string;
}
interface Pages {
  readonly all?: ComponentType;
  readonly new?: ComponentType;
  readonly one?: ComponentType<PageOf>;
  /** Pages of one thing: `#/mix/jar/<id>/label`. */
  readonly of?: Readonly<Record<string, ComponentType<PageOf>>>;
}

/** The pages of the place by the words of their address; `new` is never an id. */
const PAGES: Readonly<Record<string, Pages>> = {
  jar: { new: NewJar, one: JarPage, of: { label: LabelPage } },
  recipe: { new: NewRecipe, one: RecipePage, of: { change: ChangeRecipe } },
  ingredient: {
    all: IngredientList,
    new: NewIngredient,
    one: IngredientPage,
    of: { change: ChangeIngredient },
  },
  weigh: { new: PlanPage, one: WeighPage },
  correct: { one: ({ id }) => <CorrectLine id={id} /> },
  amount: { all: AmountPage },
  cup: { all: CupPage },
  fill: { all: FillPage },
  find: { all: FindJar },
};

/** Recipes and jars. */
export function Mix() {
  const [what = '', id = '', part = ''] = route.value.rest;
  const pages = Object.hasOwn(PAGES, what) ? PAGES[what] : undefined;
  const Whole = id === '' ? pages?.all : id === 'new' ? pages?.new : undefined;
  if (Whole) return <Whole />;
  const One = part === '' ? pages?.one : pages?.of?.[part];
  if (One && id !== '' && id !== 'new') return <One key={id} id={id} />;
  return <MixHome />;
}
