import { FINISHES } from '../../../logbook/kinds/mix/jar';
import { Page, Section } from '../../../parts/blocks/page';
import { Row } from '../../../parts/blocks/row';
import { typedWords } from '../../../parts/fields/typed-words';
import { linkTo } from '../../../parts/frame/route';
import { useShop, useUnits } from '../../../parts/frame/shop-context';
import { sheetOf } from '../../../shop/stack/sheet-times';
import { AIR_WORDS } from '../../../words/air/air';
import { FINISH_WORDS as WORDS } from '../../../words/air/finishes';
import { FINISH_NAMES } from '../../../words/mix/jar';
import { jarsInUse } from '../jar/jars-in-use';

/** The kinds of finish, and the jars with their data sheets. */
export function Finishes() {
  const shop = useShop().shop.value;
  const jars = jarsInUse(shop);
  const units = useUnits();
  return (
    <Page title={WORDS.title} backTo={linkTo('air')} backLabel={AIR_WORDS.back}>
      <p>{WORDS.intro}</p>
      <Section title={WORDS.sheets}>
        {jars.length === 0 && <p>{WORDS.noJars}</p>}
        <ul class="rows">
          {jars.map(({ id, name, product }) => {
            const sheet = sheetOf(id, shop);
            return (
              <Row key={id} href={linkTo('air', 'sheet', id)} title={name}>
                <p class="quiet">
                  {FINISH_NAMES[product.finish].label}.{' '}
                  {sheet
                    ? WORDS.hasSheet(
                        typedWords(sheet.temperature.typed, units),
                        sheet.wetFilm && typedWords(sheet.wetFilm.typed, units),
                      )
                    : WORDS.noSheet}
                </p>
              </Row>
            );
          })}
        </ul>
      </Section>
      <Section title={WORDS.kinds}>
        <ul class="rows">
          {FINISHES.map((finish) => (
            <Row key={finish} href={linkTo('air', 'finish', finish)} title={FINISH_NAMES[finish].label}>
              <p class="quiet">{WORDS.texts[finish]}</p>
            </Row>
          ))}
        </ul>
      </Section>
    </Page>
  );
}
