import { useRef, useState } from 'preact/hooks';
import { text } from '../../state/answer.ts';
import { given } from '../../state/given.ts';
import { hashOf, LONGEST_LINK } from '../../state/link.ts';

/** Whether the page lies on this computer only, so that its address means nothing elsewhere. */
const isHere = (): boolean =>
  location.protocol === 'file:' || /^(localhost|127\.0\.0\.1|\[::1\])$/.test(location.hostname);

function Says({ link }: { link: string }) {
  return (
    <>
      {link.length > LONGEST_LINK && (
        <p class="wrong">
          The link has {link.length.toLocaleString('en')} characters. Links of more than{' '}
          {LONGEST_LINK.toLocaleString('en')} are often cut off on their way: pass on the job file instead.
        </p>
      )}
      {isHere() && (
        <p>
          This page is kept on this computer, and so the link opens on this computer only. For another one, pass on the
          job file.
        </p>
      )}
      {given.value.length > 0 && (
        <p>Drawings, fonts and house files that the job names do not travel in the link: pass them on beside it.</p>
      )}
    </>
  );
}

/** A link that carries the whole job in itself. */
export function PassOn() {
  const [link, setLink] = useState('');
  const [copied, setCopied] = useState('');
  const field = useRef<HTMLInputElement>(null);
  const copy = async (): Promise<void> => {
    const made = location.href.split('#')[0] + hashOf(text.value);
    setLink(made);
    try {
      await navigator.clipboard.writeText(made);
      setCopied('The link is copied.');
    } catch {
      setCopied('This browser does not let a page copy. Copy the link from here:');
      requestAnimationFrame(() => field.current?.select());
    }
  };
  return (
    <div class="pass-on">
      <button type="button" disabled={text.value === ''} onClick={() => void copy()}>
        Copy a link to this job
      </button>
      <div role="status">
        {copied && <p>{copied}</p>}
        {link && <Says link={link} />}
      </div>
      {link && (
        <label>
          The link, with all the job in it. Nothing is sent anywhere.
          <input
            ref={field}
            type="text"
            readOnly
            value={link}
            onFocus={({ currentTarget }) => currentTarget.select()}
          />
        </label>
      )}
    </div>
  );
}
