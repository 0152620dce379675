import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { testReminder } from '../../../actions/reminders/test-reminder';
import { Button } from '../../../parts/blocks/button';
import { Fold } from '../../../parts/blocks/fold';
import { Icon } from '../../../parts/blocks/icons';
import { useShop } from '../../../parts/frame/shop-context';
import { showToast } from '../../../parts/frame/toast';
import { abilities, type Abilities as Found } from '../../../reminders/phone/abilities';
import { askPermission } from '../../../reminders/phone/notify';
import { ABILITY_WORDS } from '../../../words/plan/reminders';

/** What this phone can do to remind, told as it is, and a test of it. */
export function Abilities() {
  const { needs } = useShop();
  const found = useSignal<Found | undefined>(undefined);
  useEffect(() => {
    void abilities().then((now) => {
      found.value = now;
    });
  }, [found]);

  async function allow(): Promise<void> {
    await askPermission();
    found.value = await abilities();
  }
  async function test(): Promise<void> {
    const isShown = await testReminder(needs.now());
    showToast({ text: ABILITY_WORDS.tested[isShown ? 'shown' : 'page'] });
  }
  const can = found.value;
  return (
    <>
      {can?.notifications === 'default' && (
        <div class="acts">
          <Button kind="main" icon="bell" onClick={() => void allow()}>
            {ABILITY_WORDS.allow}
          </Button>
        </div>
      )}
      <Fold title={ABILITY_WORDS.title}>
        <p class="quiet">{ABILITY_WORDS.text}</p>
        {can && (
          <dl class="abilities">
            {linesOf(can).map(({ name, does, text }) => (
              <div key={name}>
                <dt>
                  <Icon name={SIGNS[does]} />
                  {name}
                  <span class="heard">: {ABILITY_WORDS[does]}</span>
                </dt>
                <dd>{text}</dd>
              </div>
            ))}
          </dl>
        )}
        <div class="acts">
          <Button icon="bell" onClick={() => void test()}>
            {ABILITY_WORDS.test}
          </Button>
        </div>
        {can?.notifications === 'denied' && <p class="quiet">{ABILITY_WORDS.denied}</p>}
      </Fold>
    </>
  );
}

type Does = 'yes' | 'perhaps' | 'no';
const SIGNS = { yes: 'check', perhaps: 'caution', no: 'close' } as const;
const yes = (is: boolean): 'yes' | 'no' => (is ? 'yes' : 'no');

function linesOf(can: Found): { readonly name: string; readonly does: Does; readonly text: string }[] {
  const { names } = ABILITY_WORDS;
  const { notifications } = can;
  return [
    { name: names.open, does: 'yes', text: ABILITY_WORDS.open },
    {
      name: names.background,
      does: notifications === 'granted' ? 'yes' : notifications === 'default' ? 'perhaps' : 'no',
      text: ABILITY_WORDS.background[notifications],
    },
    {
      name: names.closed,
      does: can.isWokenClosed && notifications === 'granted' ? 'perhaps' : 'no',
      text: ABILITY_WORDS.closed[yes(can.isWokenClosed && notifications === 'granted')],
    },
    { name: names.answers, does: yes(can.hasAnswers), text: ABILITY_WORDS.answers[yes(can.hasAnswers)] },
    { name: names.sound, does: yes(can.hasSound), text: ABILITY_WORDS.sound[yes(can.hasSound)] },
    {
      name: names.vibration,
      does: can.hasVibration ? 'perhaps' : 'no',
      text: ABILITY_WORDS.vibration[yes(can.hasVibration)],
    },
    { name: names.flash, does: 'yes', text: ABILITY_WORDS.flash[yes(can.hasMotion)] },
    { name: names.awake, does: yes(can.staysAwake), text: ABILITY_WORDS.awake[yes(can.staysAwake)] },
    {
      name: names.calendar,
      does: 'yes',
      text: ABILITY_WORDS.calendar[can.sharesFiles ? 'share' : 'download'],
    },
  ];
}
