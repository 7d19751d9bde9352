import { signal } from '@preact/signals';
import './foot.css';
import { type MadeOf, readMadeOf } from './made-of.ts';

const madeOf = signal<MadeOf | undefined>(undefined);

async function open(event: Event): Promise<void> {
  if ((event.currentTarget as HTMLDetailsElement).open) madeOf.value ??= await readMadeOf();
}

function Licences({ parts, texts }: MadeOf) {
  return (
    <>
      <p>Evenfield itself is under the MIT licence. Inside this page are also:</p>
      <ul>
        {texts.map((text, at) => {
          const of = parts.filter((part) => part.text === at);
          return (
            <li key={of[0]?.name}>
              <details>
                <summary>{of.map(({ name, version, licence }) => `${name} ${version}, ${licence}`).join('; ')}</summary>
                <pre>{text}</pre>
              </details>
            </li>
          );
        })}
      </ul>
    </>
  );
}

/** The foot of the card: what others made that is inside it, and under which licences. */
export function Foot() {
  return (
    <footer class="foot">
      <details onToggle={open}>
        <summary>What this page is made of</summary>
        {madeOf.value && <Licences {...madeOf.value} />}
      </details>
    </footer>
  );
}
