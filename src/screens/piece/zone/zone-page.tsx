import { wholeKey } from '../../../actions/outlook/awaited';
import type { Zone } from '../../../logbook/fold/piece/zones';
import { LinkButton } from '../../../parts/blocks/button';
import { Page, Section } from '../../../parts/blocks/page';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import type { Stand } from '../../../shop/zone/stands';
import { TONER } from '../../../words/piece/coat/toner';
import { PHOTO_WORDS } from '../../../words/piece/photo';
import { ZONE_WORDS as WORDS } from '../../../words/piece/zone';
import { Finish } from '../finish';
import { MilestoneList } from '../milestone-list';
import { DropFillSection } from './drop-fill-section';
import { zoneLine } from './zone-line';

interface ZonePageProps {
  readonly stand: Stand;
  readonly zone: Zone;
}

/** A place on a piece: its drops, its times, its own film, and what may be done there. */
export function ZonePage({ stand, zone }: ZonePageProps) {
  const { outlooks } = useShop();
  const { piece } = stand;
  const outlook = outlooks.value.get(zone.zoneId) ?? outlooks.value.get(wholeKey(piece.id));
  const isOpen = piece.closedMs === undefined;
  return (
    <Page title={zone.name} backTo={linkTo('piece', piece.id)} backLabel={WORDS.toPiece} columns="two">
      <div class="stack">
        <p class="quiet">{[piece.name, zoneLine(zone, useUnits())].join(' · ')}</p>
        {zone.note && <p>{zone.note}</p>}
        {isOpen && (zone.is === 'chip' || zone.is === 'fissure') && (
          <DropFillSection stand={stand} zone={zone} />
        )}
        {isOpen && <Acts zone={zone} hasCoats={piece.coats.length > 0} />}
        <Section title={WORDS.finish}>
          <Finish piece={piece} outlook={outlook} />
        </Section>
      </div>
      <div class="stack">
        {isOpen && (
          <Section title={WORDS.times}>
            {outlook?.state === 'ready' ? (
              <MilestoneList piece={piece} outlook={outlook} standId={zone.zoneId} />
            ) : (
              <p class="quiet">{WORDS.noTimes}</p>
            )}
          </Section>
        )}
      </div>
    </Page>
  );
}

function Acts({ zone: { piece, zoneId }, hasCoats }: { readonly zone: Zone; readonly hasCoats: boolean }) {
  const at = `?zone=${zoneId}`;
  return (
    <div class="acts piece-acts">
      <LinkButton icon="coat" href={`${linkTo('lay')}?piece=${piece}&zone=${zoneId}`}>
        {WORDS.lay}
      </LinkButton>
      {hasCoats && (
        <>
          <LinkButton icon="check" href={linkTo('piece', piece, 'check') + at}>
            {WORDS.check}
          </LinkButton>
          <LinkButton icon="sand" href={linkTo('piece', piece, 'sand') + at}>
            {WORDS.sand}
          </LinkButton>
        </>
      )}
      <LinkButton icon="match" href={linkTo('piece', piece, 'photos') + at}>
        {PHOTO_WORDS.take}
      </LinkButton>
      <LinkButton icon="match" href={linkTo('piece', piece, 'toner') + at}>
        {TONER.link}
      </LinkButton>
      <LinkButton icon="edit" href={linkTo('piece', piece, 'zone', zoneId, 'change')}>
        {WORDS.change}
      </LinkButton>
    </div>
  );
}
