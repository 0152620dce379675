import { setReminders } from '../../../actions/reminders/set-reminders';
import { isFireKind, REMINDER_KINDS, type SwitchableKind } from '../../../logbook/kinds/shop/reminder-kinds';
import { Fold } from '../../../parts/blocks/fold';
import { Notice } from '../../../parts/blocks/notice';
import { Tick } from '../../../parts/fields/tick';
import { sayRefused } from '../../../parts/frame/say-refused';
import { useShop } from '../../../parts/frame/shop-context';
import { REMINDER_KIND_WORDS, REMINDER_SETTINGS } from '../../../words/plan/reminders';

const FIRE = REMINDER_KINDS.filter(isFireKind);
const OTHERS = REMINDER_KINDS.filter((kind): kind is SwitchableKind => !isFireKind(kind));

/** A switch for each kind, but for those about fire. */
export function KindSwitches() {
  const { shop, needs } = useShop();
  const { off = [], quiet } = shop.value.reminderSettings ?? {};

  async function turn(kind: SwitchableKind, isOn: boolean): Promise<void> {
    const others = off.filter((one) => one !== kind);
    const kept = await setReminders(needs, {
      off: isOn ? others : [...others, kind],
      ...(quiet && { quiet }),
    });
    if (!kept.ok) sayRefused(kept.failure);
  }
  return (
    <Fold title={REMINDER_SETTINGS.kinds}>
      {FIRE.map((kind) => (
        <Notice key={kind} kind="fire" title={REMINDER_KIND_WORDS[kind]}>
          <p>{REMINDER_SETTINGS.fireNote}</p>
        </Notice>
      ))}
      <div class="tiles wide-tiles">
        {OTHERS.map((kind) => (
          <Tick
            key={kind}
            label={REMINDER_KIND_WORDS[kind]}
            isTicked={!off.includes(kind)}
            onTick={(isOn) => void turn(kind, isOn)}
          />
        ))}
      </div>
    </Fold>
  );
}
