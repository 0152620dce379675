import { Section } from '../../parts/blocks/page';
import { useShop } from '../../parts/frame/shop-context';
import { MORE_WORDS } from '../../words/frame/more';

const MOST_SHOWN = 50;

/** What is kept but could not be read: named, with what is wrong, and as it is. */
export function SetAsideList() {
  const aside = useShop().setAside.value;
  if (aside.length === 0) return null;
  return (
    <Section title={MORE_WORDS.aside.title}>
      <p>{MORE_WORDS.aside.text}</p>
      <ul class="set-aside">
        {aside.slice(0, MOST_SHOWN).map(({ key, issues, raw }) => (
          <li key={key}>
            <details>
              <summary>
                <code>{key}</code>
                {issues.map(({ path, problem }) => (
                  <span key={path} class="quiet small">
                    {path}: {problem}
                  </span>
                ))}
              </summary>
              <pre>{JSON.stringify(raw, undefined, 2)}</pre>
            </details>
          </li>
        ))}
      </ul>
      {aside.length > MOST_SHOWN && <p>{MORE_WORDS.aside.more(aside.length - MOST_SHOWN)}</p>}
    </Section>
  );
}
