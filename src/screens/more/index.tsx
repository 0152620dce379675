import { exportTable } from '../../actions/keep/export-table';
import { Button, LinkButton } from '../../parts/blocks/button';
import { Fold } from '../../parts/blocks/fold';
import { Page, Section } from '../../parts/blocks/page';
import { Choice } from '../../parts/fields/choice';
import { Lazy, type LoadScreen } from '../../parts/frame/lazy';
import { linkTo, route } from '../../parts/frame/route';
import { useDoor, useShop, useUnits } from '../../parts/frame/shop-context';
import { THEMES, theme } from '../../parts/frame/theme';
import { handOverFile } from '../../reminders/phone/hand-over';
import { CARD_LINKS, MORE_WORDS } from '../../words/frame/more';
import { Backup } from './backup';
import { HubSection } from './hub-section';
import { Altitude, SandingRoom } from './kept-setting';
import { SetAsideList } from './set-aside-list';
import { ThisPhone } from './this-phone';

const TABLES = MORE_WORDS.tables;

/** Pages behind the settings, fetched when asked for. */
const PAGES: Readonly<Record<string, LoadScreen>> = {
  cards: async () => (await import('./card')).Cards,
  told: async () => (await import('./score')).Score,
  hub: async () => (await import('./hub/hub-pages')).HubPages,
};

/** Settings, backup, the demo shop and what could not be read; and the pages behind it. */
export function More() {
  const [page = ''] = route.value.rest;
  const load = Object.hasOwn(PAGES, page) ? PAGES[page] : undefined;
  return load ? <Lazy load={load} /> : <Settings />;
}

function Settings() {
  return (
    <Page title={MORE_WORDS.title} backTo={linkTo('bench')} backLabel={MORE_WORDS.toBench} columns="two">
      <div class="stack">
        <SetAsideList />
        <Backup />
      </div>
      <div class="stack">
        <UnitsSection />
        <div class="folds">
          <ThemeSection />
          <SandingRoom />
          <Altitude />
          <HubSection />
          <Fold title={CARD_LINKS.title}>
            <p>{CARD_LINKS.text}</p>
            <div class="acts">
              <LinkButton icon="check" href={linkTo('more', 'cards')}>
                {CARD_LINKS.cards}
              </LinkButton>
              <LinkButton icon="clock" href={linkTo('more', 'told')}>
                {CARD_LINKS.told}
              </LinkButton>
            </div>
          </Fold>
          <DemoSection />
          <Tables />
          <ThisPhone />
          {[MORE_WORDS.privacy, MORE_WORDS.about].map(({ title, lines }) => (
            <Fold key={title} title={title}>
              {lines.map((line) => (
                <p key={line}>{line}</p>
              ))}
            </Fold>
          ))}
        </div>
      </div>
    </Page>
  );
}

const UNITS = (['metric', 'us'] as const).map((value) => ({
  value,
  label: MORE_WORDS.units[value],
  hint: MORE_WORDS.unitHints[value],
}));

function UnitsSection() {
  const { actions } = useShop();
  return (
    <Section title={MORE_WORDS.units.title}>
      <Choice
        label={MORE_WORDS.units.label}
        options={UNITS}
        value={useUnits()}
        onChange={(units) => void actions.changeSettings({ units })}
      />
      <p class="quiet small">{MORE_WORDS.unitsNote}</p>
    </Section>
  );
}

const ThemeSection = () => (
  <Fold title={MORE_WORDS.look.title} brief={MORE_WORDS.look[theme.now.value]}>
    <Choice
      label={MORE_WORDS.look.label}
      options={THEMES.map((value) => ({ value, label: MORE_WORDS.look[value] }))}
      value={theme.now.value}
      onChange={(value) => theme.set(value)}
    />
  </Fold>
);

function DemoSection() {
  const door = useDoor();
  const other = door.name === 'own' ? 'demo' : 'own';
  return (
    <Fold title={MORE_WORDS.demo.title}>
      <p>{MORE_WORDS.demo.text}</p>
      <div class="acts">
        <Button icon="bench" onClick={() => door.enter(other)}>
          {other === 'demo' ? MORE_WORDS.demo.enter : MORE_WORDS.demo.leave}
        </Button>
      </div>
    </Fold>
  );
}

/** The coats, recipes and readings as files for a spreadsheet. */
function Tables() {
  const { needs } = useShop();
  return (
    <Fold title={TABLES.title}>
      <p>{TABLES.text}</p>
      <div class="acts">
        {(['coats', 'recipes', 'readings'] as const).map((name) => (
          <Button key={name} onClick={() => void exportTable(needs, name).then(handOverFile)}>
            {TABLES[name]}
          </Button>
        ))}
      </div>
    </Fold>
  );
}
