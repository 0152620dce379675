import type { ComponentType } from 'preact';
import { route } from '../../parts/frame/route';
import { DyeTonerPage } from './about/dye-toner-page';
import { ChangeMatch, NewMatch } from './about/match-form';
import { ShiftPage } from './about/shift-page';
import { TargetPage } from './about/target-page';
import { TintersPage } from './about/tinters-page';
import { HidingPage } from './hiding/hiding-page';
import { MatchList } from './match-list';
import { MatchPage } from './match-page';
import { ColourPhotoPage } from './photo/colour-photo-page';
import { ReadPage } from './reading/read-page';
import { MixPage } from './trial/mix-page';
import { TrialJarPage } from './trial/trial-jar-page';
import { TrialPage } from './trial/trial-page';
import { MatchGiven, type OfMatch } from './use-match';

/** The pages of one match by the word after its id. */
const PAGES: Record<string, ComponentType<OfMatch>> = {
  change: ChangeMatch,
  target: TargetPage,
  read: ReadPage,
  photo: ColourPhotoPage,
  mix: MixPage,
  trial: TrialPage,
  jar: TrialJarPage,
  shift: ShiftPage,
  tinters: TintersPage,
  hiding: HidingPage,
  toner: DyeTonerPage,
};

/** A target, its trials, and what to add next. */
export function Match() {
  const [id, page = ''] = route.value.rest;
  if (id === undefined) return <MatchList />;
  if (id === 'new') return <NewMatch />;
  const Shown = (Object.hasOwn(PAGES, page) && PAGES[page]) || MatchPage;
  return <MatchGiven key={route.value.rest.join('/')} id={id} page={Shown} />;
}
