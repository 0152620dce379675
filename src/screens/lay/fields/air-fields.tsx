import { MOVEMENTS } from '../../../logbook/kinds/shop/air';
import { LIMITS } from '../../../logbook/limits';
import { Choice } from '../../../parts/fields/choice';
import { TypedField } from '../../../parts/fields/typed-field';
import { useShop } from '../../../parts/frame/shop-context';
import { HOUR_MS } from '../../../units';
import { LAY_WORDS } from '../../../words/piece/coat/lay';
import { agoWords } from '../../../words/times';
import type { AirDraft } from './air-draft';

interface AirFieldsProps {
  readonly air: AirDraft;
  readonly onChange: (more: Partial<AirDraft>) => void;
  readonly isTried: boolean;
}

const MOVEMENT_OPTIONS = MOVEMENTS.map((value) => ({ value, ...LAY_WORDS.movements[value] }));
const OLD_MS = 4 * HOUR_MS;

/** The air: as read before, with its age, or read again. */
export function AirFields(props: AirFieldsProps) {
  const { air, onChange } = props;
  const { shop, nowMs } = useShop();
  const last = shop.value.airReadings.at(-1);
  const ageMs = last ? nowMs.value - last.atMs : 0;
  const isOld = air.from === 'last' && ageMs > OLD_MS;
  const again = { value: 'again', label: LAY_WORDS.airAgain } as const;
  const options = last
    ? ([{ value: 'last', label: LAY_WORDS.airSame(agoWords(ageMs)) }, again] as const)
    : ([again, { value: 'unknown', label: LAY_WORDS.airUnknown }] as const);
  return (
    <>
      <Choice
        label={LAY_WORDS.air}
        options={options}
        value={air.from}
        onChange={(from) => onChange({ from })}
      />
      {isOld && <p class="quiet">{LAY_WORDS.airOld(agoWords(ageMs))}</p>}
      {air.from === 'again' && <ReadAgain {...props} />}
    </>
  );
}

const ReadAgain = ({ air, onChange, isTried }: AirFieldsProps) => (
  <>
    <TypedField
      label={LAY_WORDS.temperature}
      limit={LIMITS.temperature}
      draft={air.temperature}
      onDraft={(temperature) => onChange({ temperature })}
      isTried={isTried}
    />
    <TypedField
      label={LAY_WORDS.humidity}
      limit={LIMITS.humidity}
      draft={air.humidity}
      onDraft={(humidity) => onChange({ humidity })}
      isTried={isTried}
    />
    <Choice
      label={LAY_WORDS.movement}
      options={MOVEMENT_OPTIONS}
      value={air.movement}
      onChange={(movement) => onChange({ movement })}
    />
  </>
);
