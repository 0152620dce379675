import { route } from '../../../parts/frame/route';
import { AddScreen } from './add-screen';
import { HubHome } from './hub-home';
import { JoinPage } from './join-page';
import { LostPhone } from './lost-phone';

/** The hub and what joins it. Whatever else stands behind it in the address is a code to join with. */
export function HubPages() {
  const [, page = ''] = route.value.rest;
  if (page === '') return <HubHome />;
  if (page === 'code') return <AddScreen />;
  return page === 'lost' ? <LostPhone /> : <JoinPage />;
}
