import type { ComponentType } from 'preact';
import { route } from '../../parts/route';
import { HidingPage } from './hiding-page';
import { ChangeMatch, NewMatch } from './match-form';
import { MatchList } from './match-list';
import { MatchPage } from './match-page';
import { MixPage } from './mix-page';
import { PhotoPage } from './photo-page';
import { ReadPage } from './read-page';
import { ShiftPage } from './shift-page';
import { TargetPage } from './target-page';
import { TintersPage } from './tinters-page';
import { TonerPage } from './toner-page';
import { TrialPage } from './trial-page';
import { MatchGiven, type OfMatch } from './use-match';

/** The pages of one match by the word after its id. */
const PAGES: Record<string, ComponentType<OfMatch>> = {
  change: ChangeMatch,
  target: TargetPage,
  read: ReadPage,
  photo: PhotoPage,
  mix: MixPage,
  trial: TrialPage,
  shift: ShiftPage,
  tinters: TintersPage,
  hiding: HidingPage,
  toner: TonerPage,
};

/** A target, its trials, and what to add next. */
export function Match() {
  const [id, page = ''] = route.value.rest;
  if (id === undefined) return <MatchList />;
  if (id === 'new') return <NewMatch />;
  const Shown = (Object.hasOwn(PAGES, page) && PAGES[page]) || MatchPage;
  return <MatchGiven key={route.value.rest.join('/')} id={id} page={Shown} />;
}
