import type { Room } from '../../../logbook/fold/shop/shop-air';
import { Icon } from '../../../parts/blocks/icons';
import { useUnits } from '../../../parts/frame/shop-context';
import { flowWords } from '../../../words/air/flows';
import { ROOM_WORDS as WORDS } from '../../../words/air/room';

/** The room's own extraction beside what is asked. It never says that it is enough. */
export function OwnExtraction({ neededM3S, room }: { readonly neededM3S: number; readonly room: Room }) {
  const units = useUnits();
  const isBelow = room.airFlow.si < neededM3S;
  const how = WORDS.flowOrigins[room.flowFrom].label.toLowerCase();
  return (
    <>
      <p class="state" data-kind={isBelow ? 'stop' : 'quiet'}>
        <Icon name={isBelow ? 'stop' : 'note'} />
        {isBelow ? WORDS.below : WORDS.above}
      </p>
      <p>
        {WORDS.own(flowWords(room.airFlow.si, units), how)} {room.flowFrom === 'rated' && WORDS.ratedNote}
      </p>
    </>
  );
}
