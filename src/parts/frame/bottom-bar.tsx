import { BAR } from '../../words/frame/app';
import { Icon } from '../blocks/icons';
import { linkTo, type Place } from './route';

const LEFT = ['bench', 'mix'] as const;
const RIGHT = ['match', 'air'] as const;

/** The four places within reach of a thumb, and between them the one raised button. */
export function BottomBar({ place }: { readonly place: Place }) {
  return (
    <nav class="bar" aria-label={BAR.label}>
      {LEFT.map((name) => (
        <PlaceLink key={name} name={name} isHere={place === name} />
      ))}
      <a class="bar-lay" href={linkTo('lay')} aria-current={place === 'lay' ? 'page' : undefined}>
        <span class="bar-disc">
          <Icon name="coat" />
        </span>
        {BAR.lay}
      </a>
      {RIGHT.map((name) => (
        <PlaceLink key={name} name={name} isHere={place === name} />
      ))}
    </nav>
  );
}

type BarPlace = (typeof LEFT)[number] | (typeof RIGHT)[number];

function PlaceLink({ name, isHere }: { readonly name: BarPlace; readonly isHere: boolean }) {
  return (
    <a href={linkTo(name)} aria-current={isHere ? 'page' : undefined}>
      <Icon name={name} />
      {BAR[name]}
    </a>
  );
}
